/** What else is worked on, held or spoken of. One row a class; plurals are made. `level-noun` and the like are deeds named as nouns. */
import type { Thing } from '../../senses.ts';

export const THING_WORDS: Readonly<Record<Thing, string>> = {
  bed: 'bed, print bed, platform, printbed, build bed, print table, y bed',
  fan: 'fan, ventilator, cooling fan, vent fan, fans, cooler',
  feeder:
    'feeder, extruder, feed, filament drive, extruder body, feed unit, feeder mechanism, extruder drive, feeder block, extruder gears and arm, feed mechanism, drive unit, feeder unit, cold end, extruder assembly, feeder housing',
  'hot-end':
    'hot bit, the hot bit, hot thing, heating bit, hot end, hotend, heater block, heat block, print head, printhead, toolhead, tool head, head, heating block, hot block, nozzle area, heatblock, extruder head, hot ends',
  dust: 'dust, fluff, lint, cobwebs, dust bunnies, hair, fuzz on the boards, filth',
  debris:
    'purge worm, purge worms, dead purge worms, worms, debris, scrap, scraps, purge bits, purge line, purge lines, strings, skirt, skirts, blob, poop, poops, purge poop, bits of plastic, plastic bits, bits of filament, filament bits, brim, brims, swarf, offcut, offcuts, rubbish, crumbs, stray bits, old bits, bits, loose plastic, purge waste, waste, trash, purge scraps, bits and bobs, purge, purge blobs, filament ends, filament scraps, scrap filament, stray filament, bits of support, old skirts, plastic scraps, print scraps, support bits, loose bits, filament snippets, snippets, clippings, scrap plastic, purge strings, purge pile, odds and ends',
  glue: 'glue, glue stick, glue residue, adhesive, hairspray, residue, old glue, fingerprints, greasy fingerprints, finger marks, glue stick residue, glue marks, grease marks',
  jam: 'slug of plastic, slug, clump of filament, old filament bit, jam, clog, blockage, blocked nozzle, blockages, partial clog, plug of plastic, blocked hot end, stuck filament, broken filament, nozzle jam, nozzle clog, feeder jam, heat creep jam, partial jam, snapped filament, filament stuck in the hot end, bit of filament stuck, nozzle blockage, extruder jam, broken bit of filament, snapped bit of filament, stuck bit of filament, partial blockage, snapped off filament, bit of broken filament, bit of snapped filament',
  firmware:
    'firmware, fw, firmware build, build of firmware, software version, printer software, firmwear, new firmware, newest firmware, latest firmware, firmware version',
  settings:
    'params, parameters, the params, setting, settings, config, configuration, eeprom, parameters, profile backup, config file, config backup, printer settings, machine settings, settings file, parameter set, printer config',
  spool: 'spool, real of, roll, reel, coil, rolls, fresh spool, spools',
  print:
    'print, prints, job, part, object, model, piece, bust, mask, helmet, print job, jobs, plate of parts, overnight print, parts, vase, gear print, batch, overnighter, objects, prop part',
  dryer:
    'dryer, drybox, dry box, filament dryer, drying oven, filament drier, drier, dehydrator, drying cabinet, dry cabinet, filament oven, desiccant box',
  enclosure:
    'enclosure, chamber, cabinet, housing, casing, window, inside walls, enclosure panels, side panels, perspex, acrylic panels, enclosure windows, doors and windows, inside of the enclosure, chamber walls, hood, enclosure glass, side window, panes, cover panels, side panel, acrylic, interior',
  frame:
    'frame, chassis, frame bolts, uprights, extrusions, frame corners, base frame, metalwork, casework, aluminium profiles',
  gantry:
    'gantry, x gantry, portal, crossbar, bridge, z gantry, x axis beam, both z sides, gantry sides, z sides, beam',
  'mains-lead':
    'mains lead, power lead, mains cable, power cord, mains plug, mains cord, power cable, kettle lead, mains flex, mains inlet, iec lead, wall plug, mains connection, plug and cord, mains leads, lead and plug, power inlet, plug and lead',
  guard:
    'guard, guards, covers, cover, safety cover, interlock, door interlock, belt guard, safety guard, emergency stop, e stop, estop, psu cover, belt cover, door safety switch, protective covers, safety switch, safety interlock',
  protection:
    'heater fault shutdown test, heater fault shut down test, shutdown test, shut down test, heater fault test, fault shutdown test, thermal protection, heater protection, runaway protection, thermal runaway protection, heater fault shutdown, heater fault shut down, heater fault cut out, thermal cutoff, thermal cut out, thermal cutout, protection test, runaway test, heater fault, heater shut off, heater cut out, heater fault protection, heater safety cut out, protection, heater cut off, thermal runaway test, thermal shutdown, thermal shut down, heater fault test, heat protection, overheat protection, temperature protection, heater shut down, safety shutdown, safety shut down, heater safety shutdown, over temperature cut out, runaway protection test, thermal runaway shutdown, heater safety cutout, thermal fuse test, thermal protection test, heater fault shut off',
  'first-layer':
    'first layer, the first layer, first layer of, 1st layer, layer one, first layers, layer 1, initial layer, bottom layer, first layer test, first layer patch, squish',
  offset: 'z offset, offset, nozzle height, live z, baby step, babystep, nozzle gap, z height, zero offset',
  mesh: 'mesh, bed mesh, abl, auto bed level, auto level, height map, auto levelling, auto leveling, bed map, heightmap, levelling routine, leveling routine, mesh levelling, mesh leveling, auto bed levelling, auto bed leveling',
  esteps:
    'e steps, estep, rotation distance, extruder steps, steps per mm, flow calibration, e step, 100 mm test, extrusion multiplier test, 100 mm extrusion test, extruder calibration, feeder calibration, feed rate calibration, steps, extruder step, e steps per mm, extrusion steps, feeder steps, flow rate, flow, steps mm, feed calibration, extruder steps per mm',
  temperature:
    'pid constants, pid parameters, pid coefficients, heater constants, control constants, temperature, temp, temps, readout, temp readout, temperature readout, temperatures, nozzle temp, hot end temp, bed temp, hot end temperature, bed temperature, nozzle temperature, pid, pid tune, temperature tuning, pid tuning, pid autotune, temp tuning, heater tuning, pid values, temperature control, autotune, auto tune, temperature tower, temp tower, heat tower, temperature regulation, temperature loop, hot end pid, bed pid, heater pid, pid loop, pid calibration, temperature calibration, temp calibration',
  pressure:
    'feeder pressure, extruder tension, idler tension, feeder spring, idler arm, feeder tension, extruder spring, pinch pressure, feeder arm, grip pressure, tension arm, idler lever, pressure arm, extruder arm',
  eccentric:
    'eccentric, eccentric nut, eccentric spacer, cam nut, eccentrics, excentric, excentric nut, cam nuts, eccentric screw, wheel eccentric, cam spacer, eccentric nuts, excentrics',
  'grub-screw':
    'grub screw, set screw, grub, pulley screw, grubs, pulley grub, pulley set screw, pulley grub screw, coupler screw, setscrew, coupler grub screw, grubscrew, coupler grub, pulley grubs, grubscrews',
  'ball-screw':
    'ball screw, ball screws, z ball screw, ballscrew, recirculating ball screw, z axis ball screw, ball spindle',
  'smoke-detector':
    'smoke detector, smoke alarm, fire alarm, smoke sensor, smoke alarms, smoke detectors, detector, fire detector',
  extinguisher:
    'extinguisher, fire extinguisher, co2 extinguisher, extinguishers, fire ext, powder extinguisher',
  extraction:
    'smoke pencil, smoke pen, smoke stick, extraction, extractor, extractor fan, fume extraction, fume extractor, ventilation, exhaust fan, extractor hood, extraction fan, air extraction, extraction duct, fume hood, room fan, room ventilation, extraction hose, extraction system, exhaust duct, air extractor, extract fan, vent duct, exhaust hose',
  solvents:
    'solvent, solvent cupboard, solvent cabinet, solvents, solvent store, flammables cabinet, flammables cupboard, chemicals, chemical cupboard, solvent shelf, solvent locker, flammables, chemical store, solvent bottles, ipa store, solvent storage, flammables store, chemical cabinet, flammable cupboard, flammable cabinet, solvents cupboard, solvents cabinet, ipa cupboard, flammables locker',
  'safety-kit':
    'safety kit, first aid kit, first aid box, safety glasses, goggles, gloves, eye wash, eyewash, burn kit, burn gel, ppe, safety gear, first aid, safety box, heat gloves, safety goggles, first aider box, heat proof gloves, safety equipment, eye wash bottle, fire blanket, eye protection, first aid cabinet, burns kit, heat resistant gloves, burn dressings, safety specs, plasters, protective gloves, protective gear, burns gel, burn cream',
  notices:
    'release notes, safety notice, safety notices, firmware release, firmware releases, firmware notices, recall, recalls, release page, releases, recall notice, recall notices, safety bulletin, safety bulletins, firmware news, firmware page, manufacturer notices, maker notices, notices, safety recall, recall list, security notice, maker site, manufacturer site, recall page, bulletins, maker page, release list',
  'filament-path':
    'filament path, spool path, filament route, path of the filament, filament run, spool to feeder, filament guide, way from the spool, way of the filament, filament guides, path from the spool, feed path, filament track, path from spool, filament feed path, spool to extruder',
  'x-axis': 'x axis, x',
  'y-axis': 'y axis, y',
  'z-axis': 'z axis, z',
  counter:
    'counter, readings as of, counter readings, meter readings, hour readings, hour meter, odometer, hour counter, meter, total print time, lifetime, hours counter, print counter, total hours, print time counter, machine hours, hourmeter, runtime counter, running total, print hours counter, lifetime counter, hour clock, life counter, running hours, run hours, total time, total runtime, operating hours, printer hours, time counter, lifetime hours, print hour counter, clock, total print hours, lifetime total, runtime, statistics page, stats page, print time total, total printing time, hour count, hours reading, meter reading, counter reading',
  shelf:
    'shelf, drawer, cupboard, stock, store, box, bin of spares, stores, storage, stockroom, spares box, spares drawer, storeroom, spares shelf, spares bin, rack, stash, spare parts box, spares cupboard, supply cupboard, bag, inventory, spares, store room, stores cupboard, tin, pot, jar, supplies, parts drawer, parts bin, parts box, tray',
  job: 'clock out, clock off, clocking out, clocking off, clocked out, clock in, task, tasks, jobs, work, maintenance, chore, chores, to do, todo, to dos, upkeep, check up, maintenance jobs, maintenance task, maintenance tasks, care, maintenance plan, schedule, care jobs, care tasks, servicing, routine, plan, to do list, todo list, list of jobs, maintenance list',
  sensor: 'sensor, sensors',
  machine: 'machine, printer, 3d printer, unit, printers, machines, the beast, 3d printers, fleet',
  axis: 'axis, axes, motion system, motion, linear motion',
  'belts-all': 'belts and pulleys',
  play: 'play, wobble, slop, looseness, backlash, slack in the wheels, wheel play, carriage play, bed play',
  'tension-noun':
    'belt tension, belt tensions, belt tensioning, slack, belt slack, tension in the belts, tension of the belts, belt adjustment',
  service:
    'service, full service, maintenance round, tlc, once over, going over, check over, overhaul, weekly round, weekly, the usual, once-over, spruce up, monthly, the works, usual maintenance, general maintenance, full maintenance, proper service, some love, weekly service, monthly service, regular service, usual service',
  floor: 'floor, desk, bench, workbench, table, workshop floor, worktop',
  entry:
    'entry, log entry, log, record, note, message, last message, last entry, last log, last note, previous entry, what i said, what i wrote, last record, last one, my last, my last one, that last one, that last, that last entry, that entry, post, that log, last thing, latest entry, previous message, last post, my log, previous log, that last message, that last bit, that last log, previous one, my message, my entry, my last message, my last entry, my last log, entries, my last post, my last note, last line, last bit',
  layer: 'layer, layers, layer lines, layer line',
  hands: 'hands, my hands, fingers, my arms, arms, hand, arm',
  fault:
    'fault, issue, problem, trouble, failure, faults, issues, problems, failures, breakdown, breakdowns, stoppage, incident, incidents, glitch, bother, breakages, stoppages, troubles',
  paper: 'paper, feeler gauge, sheet of paper, paper test, bit of paper, piece of paper, feeler',
  gunk: 'gunk, crud, muck, burnt plastic, burnt bits, baked on plastic, char, black stuff, grime, goo, crust, old plastic, plastic crust, burnt gunk, burnt on plastic, carbonised plastic, charred plastic, gunge, molten plastic, burnt on gunk, caked plastic, burned plastic, burnt stuff, dirt, burnt crud, carbon deposits, dried plastic, stuck plastic, plastic residue, melted blob, black crud, cooked plastic, baked plastic, mess, stuff, sludge',
  plastic:
    'plastic, filament dust, plastic dust, shavings, plastic shavings, filament shavings, ground plastic, ground filament, filament crumbs, plastic powder, ground up filament, filament powder, plastic crumbs, plastic flakes, flakes, chewed filament, filament chips, ground up plastic, filament debris, filament flakes, powder, pla dust, petg dust, ground pla, nylon dust, plastic grit',
  leftover: 'leftover, remainder, leftovers',
  interval:
    'interval, intervals, service interval, schedule interval, maintenance interval, change interval, replacement interval',
  smell:
    'smell, smells, smelled, smelt, stinks, stinking, stank, reeks, reeking, pongs, whiffs, niff, odour, odor, whiff, stink, pong, scent, reek, stench, smelling',
  noise: 'noise, noises, sound, sounds, racket, noisy, din, sounding, sounded',
  sign: 'sign, tag, label, note on it, out of order sign, do not use sign, warning tag, red tag, do not use tag, lockout tag, out of order tag, sticker, warning sign',
  error:
    'error, error code, error message, err, error on the screen, alarm, warning, errors, fault code, error screen, code, halted',
  power: 'power, mains, electricity, supply',
  plug: 'plug, its plug, the plug, socket, wall socket, plugs',
  gauge: 'gauge, pressure gauge, needle, pin, seal, dial, gage',
  'tube-end':
    'tube end, end of the tube, tube ends, end off the tube, bowden end, end of the bowden, ends of the tube, ptfe end, end of the ptfe, bowden ends, tip of the tube, end off the bowden, ends of the bowden, end of its tube, end of its bowden, end of the ptfe tube, end of the bowden tube, end of the guide tube',
  pack: 'pack, packet, set, boxful, bags, packs, packets, sets, boxes, pack of',
  grille:
    'grille, fan grille, vents, vent, fan blades, fan blade, fan guard, fan guards, grilles, fan grill, fan grills, fan grilles, fan vents, fan housings, impeller, fan impeller, impellers',
  underbed:
    'under the bed, below the bed, beneath the bed, around the bed, under bed, under the plate, from under the bed, behind the bed, round the bed, underneath the bed, under its bed',
  'level-noun':
    'bed level, bed levelling, bed leveling, levelling, leveling, tramming, bed tram, bed tramming, bed leveling routine, bed adjustment, bed trim, levelness, bed level check',
  blade: 'blade, blades',
  carriage: 'carriage, x carriage, y carriage, print carriage, tool carriage',
  crack:
    'crack, cracks, sag, soft bits, soft spots, fractures, creep, hairline crack, hairline cracks, stress marks',
  corner:
    'corner, corners, edge, edges, left rear, front left, back left, front right, back right, left side, right side, rear left, rear right',
  wall: 'walls, infill, perimeters, side walls, top layers, top skin, extrusion lines, lines, strands, outer walls, inner walls, wall of the print, walls of the print',
  surface:
    'overhangs, overhang, bridges, skin, outer skin, top skin, underside, surface, surface finish, surface quality, top surface, outer surface, print surface, print quality, surface of the print, finish of the print, finish, outside of the print',
  coating: 'coating, coat of the plate, textured surface, surface of the plate, plate coating, pei coating',
  side: 'side, end, front, rear, left, right, half, top, bottom, middle, centre, center',
};
