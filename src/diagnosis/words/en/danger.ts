/*
 * The words by which a danger is known in what an owner writes. Not shown to anybody: src/diagnosis/danger.ts reads them.
 * Phrases are parted by commas; in a phrase, `/` parts words that stand for each other, `*` ends a stem, `_` is any one word.
 * All letters small, no apostrophes.
 */
const danger = {
  /** Words that belong together and are read as one. */
  joined:
    'fuse holder, fuse holders, hot end, hot ends, hot bed, heat bed, heated bed, fuse box, fuse board, fuse panel, power strip, power supply, power brick, volt/amp meter, volt/amp meters, circuit board, circuit boards',
  /** Said of something else: left out before anything is looked for. */
  innocent: [
    'smok*/flame/flames/fire/electric/shocking grey/gray/red/orange/blue/green/black/brown/white/yellow/pink/purple/silver/gold, burn*/burnt orange/sienna/umber/red/gold/copper/caramel/sugar',
    'smok*/smoke glass/quartz/oak/topaz/pla/petg/abs/filament/resin/acrylic/colour/color/coloured/colored/tint/tinted/effect/transparent/translucent/finish/ring/rings/bomb/test/stack/flavour',
    'smoke detector/detectors/sensor, smoke alarm mount/holder/box/bracket/cover/case, smoking area/room/pipe/jacket, no smoking, quit/stop/stopped/gave/give smoking, i stopped/started/start to smok*, i smoke/smoked, smoke outside',
    'fire up, fire it up, fire _ _ up, fire them up, fired up, firing up, fire away, rapid/quick/open/cease/camp/wild/bon/friendly fire, breathing/breathes fire, fire and forget',
    'fire engine*/truck*/brigade/department/station/fighter*/man/men/woman/extinguisher*/blanket/escape/door*/exit/hydrant*/pit/place*/wood/ball/fly/flies/dragon*/work/works/wall/resistant/retardant/proof/rated/hose*/watch/stick/opal/alarm',
    'flame retardant/resistant/polish*/effect/shape*/shaped/pattern*/figure, candle flame*, flames on the model/figure/side, flame on the model, at the flames',
    'burn*/burnt through, burn* time/calories/money/rate/in/question, burn* a cd/disc/dvd, burn* the/my/new firmware/image/file, burn* the new firmware/image, burning question, slow burn*, burnt out, sun burn*',
    'burn* my/his/her/your/their finger*/hand*/thumb*/arm*/skin/lip*, burn* myself/himself/herself',
    'shock absorb*/mount*/proof/resist*/cord*/wave*/collar/tower*/strut*, culture/thermal/sticker/price/temperature/mechanical/electro shock, shocked/shock how/at/to/that, as a shock, in shock, shock to see, shock when i saw, spool/price/bill/cost was a shock, shock value',
    'tickl* my/the/his/her fancy/ivories, tickl* pink, jolt* of joy',
    'spark* joy/plug/plugs/interest/idea/ideas/curiosity/debate/creativity/imagination, spark* my/an/the/his/her interest/idea/curiosity/creativity/imagination, bright spark',
    'trip* over/up/hazard, trip to/in/from/at/by/round/around/home/abroad/planner, road/round/day/school/business/field/return/boat/bus/car/train/camping/a/the/our/my/this/last trip, i/he/she/dog/cat/we/they tripped',
    'price/prices/bill/cost/costs/news/quality/result/results/noise shock*, smokestack*/smokehouse*/smoker*/smokeless, smoked salmon/fish/ham/meat/cheese/salt/paprika/trout, glow plug*, spark*/smoke and mirrors, layer/layers/strands/lines/parts fuse, fuse together/well/badly/poorly/properly/better, fuse the layers',
    'glow in, glow* under, glow* _ under/in, glow/glowing filament/pla/sticks/stick/paint/effect/review*, led/leds/strip/bar/backlight/shade/light/lights/screen/display/lamp/button/logo/eyes glow*/glows, glowing review*/eyes/led/light/lamp',
    'lead screw*/nut*/time*/pencil*/angle, leads to, lead to/by, cable tie*/chain*/clip*/guide*/gland*/management/carrier*/holder*/drag, wire brush*/wheel*/cutter*/frame*/mesh/stripper*/rack/basket/look',
    'ball and socket, socket wrench*/head*/set*/cap*/spanner*/joint*, plug in, plug it/them/this/everything in, plugs in/into, plug into, spark/ear/bath/sink/wall/drain/glow plug/plugs made/printed/of/too/holder',
    'hot glue/water/air/day/days/days/room/rooms/weather/summer/melt/knife/tea/coffee/chocolate/sauce/wheels/swap/plate/dog/pot/gun/climate/attic/garage/cupboard/car, hot wire cutter/foam',
    'board game*, board shaped, circuitboard shaped, light switch/switches cover*/plate*, switch plate*, terminal window, terminal shows/says/command*, extension tube*',
    'bang of, bang on, bang in the middle, bang when the/it head/nozzle/carriage/bed/gantry/door/hits, bang for, flash drive*/memory/light/lights/card*/point, flash the, flash on the edge, live view/hinge*/stream*/near/in/feed/edge',
    'blew/blow/blows/blowing dust/air, breaker bar/bars, tie/ice/ball/record breaker/breakers, tingl* noise*/sound*/ring*/bell*, loud crack/pop/snap when/as the part/print/piece, water bottle, rain gauge, coffee cup*, tea light*, wet/damp filament/spool/spools/sand/sanding/room',
    'explosion/exploded drawing*/view*/diagram*, power cut, power failure, power outage',
    'went/goes/going out in our/the street/town/village/area/region/neighbourhood/neighborhood, previous/last/former owner smok*, shocks me how/with/that',
  ].join(', '),
  real: 'crooked, sparkling, sparkly, sparkle, sparkles, brake, brakes, chasing, signed, drive, drivers, drier, split, strings, string, light, tried, solder, solders, scaling, sight, stated, files, finer, farther, tuned, tuning, raising, through, though, beaker, beakers, breaer, fames, single, tinge, tinged, hearing, beating, healing, scoket',

  negations:
    'no, not, never, none, nothing, without, nor, neither, isnt, arent, wasnt, werent, doesnt, dont, didnt, hasnt, havent, hadnt, cant, cannot, nobody, zero, free',
  /** May stand between a negation and what it denies. */
  fillers:
    'a, an, any, the, is, are, was, were, be, been, being, has, have, had, did, do, does, ever, yet, there, see, saw, seen, smell, smelt, smelled, smelling, sign, signs, of, visible, longer, more, single, kind, really, or, nor, hint, trace, getting, get, got, even, at, all, given, give, gives, anybody, anyone, me, us, it, to, feel, felt, noticed, notice, smoke, smoking, flames, flame, fire, sparks, spark, burning, burnt, shock, tingle, glow, glowing, hot, warm, melted, charred, electric, actual, too, very, bad, strange, funny, blown, tripped, fuse, fuses, breaker, breakers, plug, cable, wire, wires, connector, socket',
  /** A negation that denies nothing of what follows. */
  idle: 'no idea, no clue, no reason, no wonder, no doubt, no matter, no joke, not only, not just, not sure, no warning, do not know, dont know, no longer than, not long, not kidding, no error, no print, nothing but, not normal, no way',
  /** What is denied so was there once. */
  past: 'any more, anymore, no longer',

  people:
    'i, me, my, he, she, him, her, his, they, them, we, us, someone, somebody, person, man, woman, boy, girl, kid, child, children, son, daughter, husband, wife, partner, brother, sister, father, mother, dad, mum, mom, friend, colleague, coworker, student, pupil, apprentice, teacher, neighbour, neighbor, hand, hands, finger, fingers, arm, guy, member, boyfriend, girlfriend, uncle, aunt, nephew, niece, grandson, grandfather, grandpa, worker, customer, visitor, technician, granddad, grandad, gran, nan, granny, nana, toddlers, electrician, employee, trainee, intern, guest, tenant, caretaker, guys, men, women, lady, toddler, baby, grandma, grandmother, boss, roommate, flatmate',
  held: 'being electrocut*, being electricut*, being shock*, getting electrocut*, electrocuting, shocking him/her/them, shocks him/her, held by current/electricity, held by the current/electricity, current holds/is/wont/has _ hold*, not/isnt/stopped breathing, no pulse, unconscious, unresponsive',
  letGo:
    'cant/cannot/couldnt/wont let go, can/could/will/did/does/is not let/letting go, not letting go, isnt letting go, unable to let go, not able to let go, doesnt/didnt let go, cant/cannot/couldnt pull/get/break _ away/free/loose/off, cant/cannot pull away/free, can not pull _ away, can/could not pull/get/break away/free/loose, cant/cannot get/break free/loose, cant/cannot take his/her/my hand/hands off, cant release, cant/cannot/couldnt pull/take/move/get his/her/my/their hand/hands/fingers/finger/arm away/off/free/loose, can not pull/take/move/get his/her/my/their hand/hands/fingers/finger/arm away/off/free/loose',
  stuck: 'stuck/frozen/clamped/hanging/locked/glued/fixed/gripped/clinging to/on/onto',
  grabbing: 'touch*, grab*, held, took hold, gripped',
  collapsed:
    'collapsed, fainted, passed out, lying on the floor/ground, on the floor, lifeless, fell down, knocked out',
  current: 'shock*, electr*, electrocut*, current, mains, touch*, zap*, printer, machine, supply, wires, wire, power',

  fire: 'smok*, smoek, somke, fumes, flame, flames, flaming, ablaze, smoulder*, smolder*, alight, on fire, fire, ember, embers, burning down, burnt/burned down, burnt/burned to the ground, burnt/burned down, in flames, up in flames, blazing',
  alarm:
    'smoke alarm went/goes/going/rang/rings/sounded/beeps/beeping/triggered, smoke alarm is going, set/sets off the smoke alarm, setting off the smoke alarm, fire alarm went/goes',
  machine:
    'printer, machine, board, mainboard, motherboard, psu, supply, motor, heater, electronics, enclosure, box, it, thing, extruder, hotend, hotbed, bed, block, controller, driver, everything, something, insulation',
  burning: 'is/was/started/starts/are/be burning, burning up, burns itself, caught light, ignited, ignites, igniting',

  shock:
    'tingl*, tingel*, tingel, tickl*, zap, zaps, zapped, zapping, electrocut*, electricut*, electrocution, prickl*, pins and needles, electric* shock*, eletric shok, static shock*, electric*/eletric* jolt*/kick*/buzz*/sting*/prick*/zap*, shocks me/us/him/her/people/you/everyone, shocked me/us/him/her/my, shocking me/us, bites me, bit me, kicks me, stings me, stung me, current through, live frame/case/metal/chassis/housing, mains/voltage/volts on the/its frame/case/chassis/metal/housing/body/bed/gantry, frame/case/chassis/housing/casing/body/gantry/metal/rail/rails/bed/screw/screws/enclosure is/are/was/seems/feels/gets live, frame/case/chassis/housing/casing/body/gantry/metal/bed/enclosure seems/appears/_ to be live',
  shockSoft: 'shock, shocks, shocked, shocking, shok, shoks, shocj, schock, shck, eletrocut*',
  shockNear:
    'touch*, feel, felt, feels, feeling, frame, metal, case, chassis, gantry, bed, hand, hands, finger, fingers, gives, gave, give, got, get, gets, getting, received, recieved, electric*, eletric, electrical, static, mild, slight, little, small, nasty, proper, me, handle, screw, rail, rails, printer, machine',
  sting:
    'buzz*, jolt*, kick*, sting*, stung, fizz*, numb*, bite, bites, biting, electricity, current, pulse, throb*, poke*, twinge, pinch*',
  volts: 'volt, volts, voltage, potential',
  case: 'frame, case, chassis, gantry, rail, rails, enclosure, housing, casing, metal, body',
  figurative: 'price, prices, bill, cost, costs, quality, news, surprise, invoice',
  exposed:
    'exposed/bare wire/wires/copper/conductor*/cable/cables, live wire/wires/cable/lead, bare live, see copper, copper shows, see the copper, bare copper',
  touching:
    'touch*, feel, felt, feels, stroke, stroking, stroked, lean, leaned, leant, leaning, brush, brushed, grab, grabbed, hold, holding, off the, from the, barefoot, bare feet, stand, standing, wet hands',
  tester:
    'neon/mains/voltage/phase tester, neon/mains/phase _ tester, neon/mains/phase screwdriver, test lamp/screwdriver',
  bare: 'frame, metal, case, chassis, casing, housing, gantry, rail, rails, bed, screw, screws, handle, radiator, enclosure, aluminium, aluminum, printer, machine, body, nozzle, extrusion, extrusions, hotend, hotbed',
  body: 'i, me, my, finger, fingers, hand, hands, arm, arms, skin, he, she, her, his, us, we, you, got, get, gets, gives, gave',

  part: 'plug, plugs, prong, prongs, pin, pins, socket, sockets, outlet, outlets, receptacle, inlet, connector*, conector*, connecter*, terminal, terminals, cord, cords, lead, leads, flex, cable*, wire, wires, wiring, wallplug, powerstrip, extension, adapter, adaptor, adapters, crimp, crimps, ferrule, ferrules, fuseholder, fuseholders, power/rocker/main/mains/wall switch, the switch/switches, rocker, xt60, xt30, mosfet, mosfets, ssr, relay, insulation, harness, loom, kettle lead, multiway, multiplug',
  partWide:
    'plug, plugs, socket, sockets, outlet, outlets, connector*, terminal, terminals, cord, lead, cable*, wire, wires, wiring, powerstrip, extension, adapter, adaptor, psu, supply, powersupply, powerbrick, mains, electronics, board, mainboard, controller',
  damage:
    'melt*, melted, molten, charred, charring, char, chared, scorch*, burnt, burned, burning, burn, burns, singe*, blackened, blackend, blackening, browned, browning, browny, toasted, toasty, crispy, crisp, discolo*, fried, cooked, glow*, crackl*, sizzl*, fizz*, fishy, gone/went/goes/going/turned/turning/turns/got brown/black/yellow, gone/went/turned a bit/slightly/all brown/black, is/are/was/looks brown, black mark/marks/spot/spots/soot, soot*, overheat*, over heat*, carboni*, bubbled, blister*, deformed, yellowed, heat damage*, black from, are black, are brown, fused together/to, welded together/to',
  hot: 'hot, warm, scalding, boiling, roasting, heats up, heating up, gets hot, heat up, overheats, burning hot, toasty, warms up',
  supplies: 'psu, supply, powersupply, powerbrick, brick, transformer, mains adapter',
  scalding: 'hot, scalding, boiling, roasting, overheats, overheated, overheating',
  wet: 'wet, water, soaked, soaking, soaks, flooded, puddle, spill*, spilt, poured, dripped, dripping, leaked, leaking, splash*, coffee, tea, juice, beer, rain, rained, drenched, liquid, damp',
  boards:
    'board, boards, mainboard, motherboard, circuitboard, circuitboards, chip, chips, mosfet, mosfets, capacitor, capacitors, driver, component, components',
  boardDamage:
    'charred, char, scorch*, burnt, burned, burn mark*, blister*, melt*, melted, singe*, blackened, bulging, bulged, leaking, leaked, fried',
  sheath:
    'insulation, sheath*, sleeving, jacket of the cable/wire/lead, mains/power lead/cord/cable, lead, cord, flex, cable to, wire to, heater wire*, wire, wires',
  frayed: 'fray*, chafe*, perished, worn through, rubbed through, cut through, nicked, cracked, bare',
  noise: 'crackl*, fizz*, sizzl*, sputter*',
  earth:
    'earth/ground/earthing/grounding pin/prong/wire/contact/lead/terminal/conductor, earth connection, green and yellow/yellow wire',
  broken: 'broken, broke, missing, bent, loose, off, cut, snapped, torn, not connected, disconnected',
  unearthed:
    'no earth/earthing/grounding, not/isnt/never earthed/grounded, without earth/earthing/grounding, unearthed, ungrounded',
  spilled: 'spill*, spilt, poured, splashed, knocked, tipped, dropped',
  liquid: 'water, coffee, tea, juice, beer, wine, drink, liquid, milk, soda, cola, resin, soup',

  breaker:
    'breaker, breakers, braker, braekr, fuse, fuses, fusebox, fusebox, rcd, rcds, rcbo, gfci, gfcis, gfi, mcb, elcb, rccb, circuit, circuits, trip switch, safety switch, residual current, main switch, mains switch, consumer unit, fi, ground fault, earth leakage',
  trips:
    'trip*, blow, blows, blew, blown, blowing, pop, pops, popped, popping, poping, throw, throws, threw, throwing, thrown, kick, kicks, kicked, kicking, knock*, jumps, jumped, jumping, cuts out, drop, drops, dropped, dropping, goes, went, gone, flips, flipped, flipping, fly, flies, flew, shuts, out, triggers, triggered, reacts, switches off, turns off, pulls',
  tripping: 'trips, tripping, tripped, triping, triped, trip out',
  mains: 'electrics, electricity, power, lights, mains, house, lighting, whole flat, whole house',
  out: 'trip*, goes out, go out, went out, go off, goes off, went off, going out, cuts out, takes out, took out, taking out, knocks out, knocked out, gets cut, dies, goes dark, go dark, loses/lost/lose power, without power, no power',
  whenever:
    'when, whenever, as soon as, every time, each time, everytime, if, once, the moment, takes out, trip*, takes, knocks out, took out',

  heats:
    'heat, heats, heating, heated up, warm up, warms, warming, gets hot, get hot, getting hot, got hot, gets warm, getting warm, is hot, was hot, hot, hotter, warm, heats up, heater on, heaters on, comes on, turns on, turns itself on, switches on, switched itself on, glows',
  alone:
    'by itself, on its own, by its own, of its own, itself, all alone, without being told/asked/set/switched, without me, nobody touching, nobody near, with nobody, with no one, no one, unasked, uncommanded, unprompted, uncontroll*, without command/commands, nobody/noone switched/turned/started/set, no one switched/turned/started/set, spontaneously, for no reason, nobody asked/told, no one asked/told, nobody has asked, without a command, without any command, without being',
  warmer:
    'heater, heaters, bed, hotbed, hotend, nozzle, heating, block, cartridge, element, heatbed, temperature, temp, extruder, heat',
  alwaysHot:
    'heater/heaters/heating/bed/hotbed/hotend still on, heater/heaters stays/stay/remains on, permanently/constantly/continuously heating/heats, cant/cannot/couldnt get the/it/my heater/bed/hotend/hotbed/nozzle/heating to turn/switch/shut/stop/go',
  unstopped:
    'wont/doesnt/cant/cannot/didnt/never/not stop/stops/quit, refuses to stop, will not stop, does not stop, wont/doesnt/cant/cannot/didnt/not turn/switch/shut/go off, refuses to turn/switch/shut off, cannot/cant be switched/turned/shut off, cant/cannot turn/switch/shut it/them off, always on, permanently on, constantly on, on all the time/day/night, on constantly/permanently/continuously/nonstop, never turns/switches/goes/shuts off, stuck on, stays on, remains on, keeps on',
  keeps:
    'keeps, keep, kept, keeps on, goes on, going on, went on, continues, continued, carries on, carried on, still, stays, remains, even',
  hottish: 'heat, heats, heating, hot, hotter, warming, boiling, at 200, at full',
  off: 'off, zero, 0, idle, standby, not printing, nothing set, cold, disabled, unset, stop button, stopped it, cancelled',
  though:
    'when idle, even, although, though, despite, regardless, while it is, when it is, when its, hours, whatever i set, no matter, when off, zero, 0, set to zero, after i, after it, with it, when switched/turned/powered, while switched/turned/powered/off, all night, overnight, in the morning, every morning, all day',
  selfOn:
    'turns/switches/turned/switched/powers itself on, comes/came on by itself, comes/came on alone, turns/switches on by itself',
  climbs:
    'keeps/kept/keep/just climbing/rising/increasing/going, keeps/kept going up, keeps/kept getting hotter, goes on climbing/rising, continues to climb/rise, wont stop climbing/rising, runs away, running away, ran away, shoots up, through the roof',
  temperature:
    'temperature, temp, temps, degrees, heat, heater, nozzle, hotend, hotbed, bed, hot, celsius, thermometer',

  glow: 'glow, glows, glowing, glowed, red hot, redhot, cherry red, white hot, glowing red, lights up red',
  smell: 'smell*, smelt, odour, odor, stink*, stank, stench, reek*, whiff, scent, stinky, pong*, scent',
  burnt:
    'burn, burnt, burned, burning, scorch*, charred, singed, electrical, electric, electronics, electronic, acrid, fishy, smoky, smokey, smoke, overheat*, ozone, melting wire*/cable*/insulation, hot electronics, burn*',
  acrid: 'acrid, burning/burnt smell, burning/burnt/scorched/electrical/acrid/fishy odour/odor/smell/stench/stink',
  spark:
    'spark, sparks, sparking, sparked, arcing, arced, arc/arcs across/between/over/from, electric arc, electrical arc, blue arc, arcing over',
  bang: 'loud bang/pop/crack/snap, went/goes bang/pop, big/huge/massive bang, a bang and/from/inside/then/when/came, bang and/then, blue/bright/white/big/huge/massive/yellow flash, flash of light/blue, flash and, explod*, explosion, blew up, blows up, blown up, capacitor burst/popped/blew/leaked, burst capacitor, everything went dark, popped and died, short circuit*, shorted out, shorts out',
};
export default danger;
