import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';

export default calculator({
  cautions: [
    'Switch off, unplug and let it go cold before a wire is touched or resistance is measured: a meter set to ohms on a live wire is destroyed, and you with it on mains.',
    'Mains heaters and their covers are for qualified people, to the local code.',
    'The block burns at once and stays hot for a quarter of an hour.',
    'A heater of the wrong voltage starts fires. A switch that has failed closed is beyond any program: what cuts it off is a separate thermal cut-off in the heater’s supply, or the supply switched off by hand.',
    'Never run the heater with the sensor out of its hole, but for the cold test of the heater check.',
  ],
  choices,
  inputs,
  formulas,
  limits,
  action: instruct,
  proof:
    'Plug in and compare again, cold: screen and room thermometer within the limit. Then heat to 50 °C with a probe thermometer in the nozzle’s bore and compare once more; steady, without a jump when the cable is moved.',
  beware: [
    'A test at room temperature shows a wrong sensor, a broken wire or a wrong setting of resistance. It does not show a wrong B value or table: that grows with temperature.',
    'A B value is a fit between two temperatures (25 and 50, or 25 and 85 °C). Against the maker’s table expect several kelvin at 200 °C: take three lines of the table instead.',
    'A sensor loose in its hole is right in itself and reads too low hot.',
    'Platinum sensors and thermocouples follow other laws: compare only what the screen shows.',
    'The equation of Steinhart and Hart is good between its three lines; beyond them it is a guess.',
    'The heater’s resistance rises by a few per cent when hot.',
  ],
  examples,
});
