import type { OutsideProof } from '../../engine/outside';

const checks: readonly OutsideProof[] = [
  {
    source: 'ISO 2902, designation Tr 8×8(P2): four starts of 2 mm, so ten turns make 80 mm (from memory)',
    given: { x: '80 mm', N: '10', P_h: '8 mm', P: '2 mm', n_s: '4' },
    expect: { P_m: [8, 1e-9], dP: [0, 1e-9], P_d: [8, 1e-9] },
  },
  {
    source: 'The inch is 25.4 mm exactly (international yard and pound agreement, 1959): 16 threads to the inch',
    given: { x: '1 in', N: '16', P_h: '1.5 mm' },
    expect: { P_m: [1.5875, 1e-9], dP: [0.0875, 1e-9] },
  },
  {
    source: 'Common practice, no source: half a hundredth of the travel; of 8 mm a turn that is 0.04 mm',
    given: { x: '80 mm', N: '10', k_a: '0.5 %' },
    expect: { a: [0.04, 1e-9] },
  },
];
export default checks;
