/** The words for how a case comes in and goes out: begun, awaited by a check, sent and received. */
const door = {
  fresh: {
    title: 'A new case',
    complaint: 'What is wrong, in the words of whoever asks',
    owner: 'Who asks (may stay empty)',
    photo: 'A photo of it (made smaller and kept on this device; where it was taken is left out)',
    ready: 'The photo is ready and will be kept with the case.',
    symptom: 'What it looks like',
    likely: 'By these words it may be:',
    all: 'The whole list',
    machine: 'The machine',
    each: 'Each answer moves the suspicion; “Not known” moves nothing.',
    earlier: 'How the machine is built was taken from its earlier cases.',
    noSymptom: 'Pick what it looks like from the list: the checks are chosen by it.',
    noMachine: 'Choose the machine, or make one: the case is kept with it.',
    open: 'Open the case',
  },
  banner: {
    waits: (symptom: string, machine: string) =>
      `A case waits for this check: “${symptom}”. The reading you save on ${machine} becomes its answer.`,
    asks: (symptom: string, check: string) => `The case “${symptom}” asks: ${check}.`,
    taken: (symptom: string, answer: string) => `Taken as the answer in the case “${symptom}”: ${answer}.`,
    little: 'That moves the suspicion only a little: a finer reading would say more.',
  },
  handOver: {
    title: 'Hand the case over',
    link: 'The link opens this case on another phone: complaint, answers and what was said of the readings, without photos. The person does the next check there and sends their link back; it then goes on here. Everything stands in the link itself: no server gets it.',
    file: 'The file holds the machine with its readings, photos and cases.',
  },
  arrival: {
    bad: 'This link opens no case',
    newer: (reason: string) => `${reason} The link may come from a newer Trammel: bring this one up to date.`,
    noCase: 'This is not a case.',
    came: (owner: string, machine: string, opened: string) =>
      `A case came with a link${owner === '' ? '' : `, asked by ${owner}`}. There the machine is called “${machine === '' ? 'no name' : machine}”; opened ${opened}.`,
    /** After the first acts of a danger. */
    unplug: 'See with your own eyes that the machine is switched off and its plug is out, whatever the link says.',
    soFar: 'What was done so far',
    closed: 'Closed',
    whose: 'Whose case is it here?',
    take: (machine: string) => `Make it a case of ${machine}`,
    make: (machine: string) => `Make a machine “${machine}” for it`,
    same: 'This case is here already, and the link says nothing new.',
    behind: 'This case is here already, and further on than the link.',
    ahead: 'This case is here already. The link goes on from it:',
    apart: 'This case is here already, and the two have come apart: something was changed on both phones.',
    open: 'Open it',
    takeOver: 'Take this over',
    leave: 'Leave ours as it is',
    here: 'Here',
    keep: 'Keep what is here',
    inLink: 'In the link',
    takeLink: 'Take the link’s instead',
  },
};

export default door;
