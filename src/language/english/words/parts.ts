/**
 * What people call the parts and consumables. One row a code, words separated by commas; a plural is made of
 * each, and of two words also the word run together ("heat break", "heatbreak"). Brass, steel and bores are
 * `spec` words. `~` marks a word that has an everyday sense outside the printers: alone it proves nothing.
 */
import type { StockItem } from '../../../maintenance/codes.ts';

export const PART_WORDS: Readonly<Record<StockItem, string>> = {
  nozzle: 'nozzle, noz, nozz, hot end tip, nozzle tip, ~tip, ~jet, extrusion tip, brass tip, print nozzle',
  'heat-break':
    'heat brk, heat brks, heat break, throat, heat break tube, cold to hot tube, ~barrel, heatbrake, heat brake, throat tube',
  liner:
    'liner, ptfe liner, hot end liner, hot end ptfe, hot end tube, inner tube, hot end ptfe tube, hot end ptfe liner, teflon liner, inner liner, hot end teflon, ptfe insert, ptfe in the hot end, tube in the hot end, lining',
  heater:
    '~heater, heater cartridge, ~cartridge, cartridge heater, heating element, hot end heater, nozzle heater, heating cartridge, heater core, heater rod',
  thermistor:
    'thermistor, thermister, ~therm, temp sensor, temperature sensor, hot end sensor, hot end thermistor, temperature probe, temp probe, thermocouple, thermal sensor, heat sensor, ntc, thermo sensor',
  sock: 'rubber hat, little rubber hat, silicone hat, rubber boot, silicone boot, little boot, rubber cap, silicone cap, sock, silicone sock, silicone boot, silicone cover, rubber cover, heater block jacket, silicone jacket, silicon sock, heater block cover, ~boot, heater sock, nozzle sock, hot end sock, block sock, heat block sock, heater block sock',
  'hot-end-fan':
    'hot end ventilator, nozzle fan, hot end fan, hot end cooling fan, heat sink fan, cold end fan, extruder fan, heat break fan, hot end cooler, hotend cooling fan, hot end blower, always on fan, 30 mm fan, small fan, heat sink cooling fan',
  'part-fan':
    'part ventilator, print ventilator, object ventilator, part fan, part cooling fan, parts fan, part cooler, print fan, layer fan, print cooling fan, part cooling, duct fan, part cooling blower, ~blower, parts cooling fan, layer cooling fan, blower fan, radial fan, model fan, cooling duct fan, front fan, object fan',
  'board-fan':
    'electronics ventilator, board ventilator, board fan, mainboard fan, main board fan, motherboard fan, electronics fan, case fan, psu fan, control box fan, control board fan, driver fan, power supply fan, electronics box fan, electronics cooling fan, controller fan, base fan, board cooling fan, stepper driver fan',
  'feeder-gear':
    'drive gear, extruder gear, hobbed gear, hobbed bolt, ~hob, ~cog, toothed wheel, knurled wheel, filament gear, dual gear, feeder gear, feed gear, ~gear, feeder cog, drive cog, extruder cog, hobbed wheel, drive wheel, feeder wheel, feed wheel, extruder wheel, drive gears, hobbed drive gear, idler gear, knurled gear, filament drive gear, feeder drive gear, extruder drive gear, grip gear, driven gear, gear set, gearset, teeth of the feeder, feeder teeth, gear teeth, filament cog, pinch wheel, pinch gear',
  'guide-tube':
    '~pipe, plastic pipe, white pipe, feed pipe, guide tube, bowden, bowden tube, boden, boden tube, bowdin, ptfe tube, ~ptfe, feed tube, filament tube, long white tube, white tube, ~teflon, teflon tube, ~tube, bowden ptfe, reverse bowden, filament guide tube, tubing, bowden line, feeder tube, ptfe guide tube, ptfe tubing, bowden guide',
  'tube-fitting':
    'tube fitting, collet, push fit, push fit connector, push in fitting, push fit fitting, pneumatic fitting, pneumatic connector, pneumatic coupler, pneumatic coupling, tube coupler, tube coupling, tube connector, bowden coupler, bowden coupling, bowden connector, bowden fitting, bowden clip, collet clip, tube clip, ptfe coupler, ptfe connector, ptfe fitting, push connector, push in connector, tube collet, bowden collet, pc4 m6, quick connector, fitting, tube clamp, thing that grips the tube',
  'x-belt':
    'x belt, x axis belt, gantry belt, belt on x, x timing belt, x drive belt, belt on the x axis, belt on the x, x strap, belt for x, carriage belt, x axis timing belt',
  'y-belt':
    'y belt, y axis belt, bed belt, belt on y, y timing belt, y drive belt, belt on the y axis, belt on the y, y strap, belt for y, y axis timing belt, belt under the bed',
  belt: '~belt, timing belt, toothed belt, drive belt, ~strap, motion belt, both belts, x and y belts, x and y belt, xy belts, xy belt, x y belts, x/y belts, y and x belts, rubber belt, z belt',
  pulley:
    'pulley, drive pulley, toothed pulley, motor pulley, motor cog, stepper pulley, belt pulley, x pulley, y pulley, timing pulley, belt cog, motor gear, pulley wheel, toothed thing on the motor shaft, pully, pulleys, x motor pulley, y motor pulley',
  idler:
    'idler, idler pulley, tensioner wheel, return pulley, belt roller, belt idler, idler wheel, tension pulley, tensioner pulley, x idler, y idler, idler bearing, idler roller, end idler, smooth idler, toothed idler, return wheel',
  wheel:
    '~wheel, v wheel, pom wheel, ~roller, v slot wheel, carriage wheel, bed wheel, gantry wheel, v roller, pom roller, v slot roller, gantry roller, carriage roller, bed roller, vee wheel, v slot wheels, delrin wheel, z wheel, x wheel, y wheel, guide wheel, guide roller',
  bearing:
    '~bearing, linear bearing, bushing, ~bush, lm8uu, lm 8 uu, ball bearing, rod bearing, polymer bearing, x bearing, y bearing, z bearing, sliding bearing, linear bushing, lm8, carriage bearing, sleeve bearing, bronze bushing, bearing block',
  rod: 'shiny bar, shiny rod, silver rod, silver bar, metal bar, shiny steel rod, ~rod, smooth rod, linear rod, guide rod, ~shaft, chrome bar, linear shaft, x rod, y rod, z smooth rod, smooth shaft, guide shaft, round rod, chrome rod, steel rod, precision rod, guide bar, polished rod, smooth bar, chromed rod, z rods, chromed bar',
  rail: '~rail, linear rail, linear guide, ~slide, x rail, y rail, z rail, guide rail, carriage block, rail carriage, rail block, linear slide, linear bearing rail, slide rail, linear guideway, guideway, linear carriage',
  'lead-screw':
    'lead screw, z screw, threaded rod, ~spindle, trapezoidal screw, z rod, z axis screw, z lead screw, z spindle, trapezoidal rod, drive screw, leed screw, z threaded rod, z axis lead screw, z thread, z drive screw, z axis screws, screw on z, acme screw, acme rod, lead screws, z leadscrew',
  'screw-nut':
    'screw nut, z nut, brass nut, lead screw nut, pom nut, plastic nut, anti backlash nut, backlash nut, z axis nut, lead nut, screw nuts, anti-backlash nut, drive nut, trapezoidal nut, z screw nut, delrin nut, bronze nut',
  coupler:
    'coupler, z coupler, ~coupling, shaft coupler, flexible coupler, ~spider, shaft coupling, motor coupler, z coupling, flex coupler, flexible coupling, motor coupling, lead screw coupler, z axis coupler, screw coupler, flex coupling, spider coupling',
  'build-plate':
    'build plate, ~plate, ~sheet, pei, pei sheet, spring steel, spring steel sheet, steel sheet, flex plate, build surface, ~glass, ~mat, print plate, bed sheet, bed surface, glass bed, glass plate, magnetic sheet, pei plate, build platform, print sheet, build sheet, textured plate, textured sheet, smooth sheet, smooth plate, flexible plate, magnetic plate, buildplate, printing plate, bed plate, print platform, build mat, steel plate, flex sheet, pei bed, magnetic mat, bed surface sheet, glass sheet',
  'bed-spring':
    'bed spring, ~spring, levelling spring, leveling spring, silicone spacer, silicone bed spacer, levelling knob, leveling knob, bed knob, thumb nut, ~knob, bed level spring, bed mount, silicone column, silicon spacer, bed levelling spring, bed leveling spring, thumb wheel, bed spacer',
  'bed-heater':
    'bed heater, heated bed, heat bed, heater mat, heater pad, heating pad, heating mat, bed heating element, bed heater mat, bed element, silicone heater, heating bed, hot bed, bed heating mat, bed heat pad, silicone heater mat, bed heater pad, bed heating',
  probe:
    '~probe, z probe, bed probe, bed sensor, levelling sensor, leveling sensor, touch probe, inductive sensor, inductive probe, levelling probe, leveling probe, probe pin, bed level sensor, bed levelling sensor, bed leveling sensor, bed levelling probe, bed leveling probe, z sensor, z probe pin, nozzle probe, proximity sensor, strain gauge',
  'end-stop':
    'end stop, limit switch, endstop switch, homing switch, x end stop, y end stop, z end stop, home switch, end switch, limit sensor, x limit switch, y limit switch, z limit switch, end stop switch, ~microswitch, opto end stop',
  'printed-part':
    'cable clip, cable clips, cable guide, cable holder, drag chain, cable chain, chain link, printed foot, printed knob, printed lever, printed handle, printed tray, cable clip, cable clips, cable guide, cable guides, wire clip, cable chain, fan duct, duct, part cooling duct, cable cover, printed part, printed bracket, printed mount, plastic bracket, ~bracket, printed bit, printed bits, printed clamp, printed holder, printed duct, printed corner, printed tensioner, plastic mount, plastic clamp, plastic tensioner, ~mount, ~duct, fan duct, printed arm, printed carriage, plastic bit, plastic part, printed piece, fan shroud, ~shroud, ~clamp, carriage mount, motor mount, tensioner, belt tensioner, printed fan duct, printed cover, printed plastic, hot end mount, tensioner bracket, printed plastic part, printed frame part, printed stuff, printed component, belt clamp, printed belt clamp, cooling duct, pla bracket, petg bracket, printed mounts',
  fastener:
    '~screw, ~bolt, ~nut, ~washer, t nut, m two, m three, m four, m five, m six, m eight, m three screw, m three bolt, m three nut, m four screw, m four bolt, m five screw, m five bolt, m2, m3, m4, m5, m6, m8, m3 screw, m4 screw, m5 screw, m3 bolt, m4 bolt, m5 bolt, m3 nut, m4 nut, m5 nut, frame bolt, frame screw, allen bolt, hex bolt, cap screw, socket head screw, grub screw spare, fastener, frame fastener, screws and bolts, nuts and bolts, bolts and screws, nut and bolt, fixings, fixing, hex screw, m3x8, carriage bolt, lock nut, gantry bolt, bracket screw, mounting screw, allen screw',
  filter:
    '~filter, carbon filter, charcoal filter, ~charcoal, ~hepa, hepa filter, air filter, activated carbon, carbon cartridge, filter cartridge, fume filter, filter element, particle filter, filter pad, active carbon, enclosure filter, carbon pad, exhaust filter, voc filter, recirculating filter, charcoal pad',
  motor:
    '~motor, stepper, stepper motor, x motor, y motor, z motor, extruder motor, feeder motor, x stepper, y stepper, z stepper, extruder stepper, e motor, feed motor, x axis motor, y axis motor, z axis motor, drive motor',
  wiring:
    '~wire, ~cable, ~loom, ~harness, ~wiring, ~connector, ~crimp, ribbon, ribbon cable, chain cable, cable chain, drag chain, wiring loom, wire loom, cable harness, wiring harness, ~terminal, terminal block, screw terminal, bed cable, hot end cable, heater wire, heater cable, thermistor wire, thermistor cable, bed wire, fan wire, fan cable, motor cable, ~lead, heater lead, ~ferrule, plug and socket, hot end loom, bed wiring, hot end wiring, hot end wires, cable loom, wires and plugs, flat cable, stepper cable, motor wire, plugs and wires, connectors, board connector, cables and plugs, bed terminal, fan lead, fan plug, motor lead, heater plug, bed plug, hot end plug, fan connector, heater connector, bed connector, motor connector, cables, bed lead, hot end lead, jst',
  'power-supply':
    'power supply, psu, power supply unit, power brick, supply unit, power pack, psu unit, mains psu',
  'control-board':
    'control board, mainboard, main board, motherboard, controller board, ~controller, printer board, driver board, stepper driver, control pcb, electronics board, logic board, mother board, ~board, mcu board',
  screen:
    '~screen, touch screen, lcd, lcd screen, ~display, display panel, control panel, touch panel, touchscreen, control screen, tft, printer screen, ~panel, touch display, control knob',
  camera: '~camera, ~webcam, ~cam, print camera, chamber camera, printer camera, nozzle camera',
  'spool-holder':
    'thing that holds the roll, thing that holds the spool, thing that holds the reel, roll holder thing, spool holder, reel holder, roll holder, spool arm, spool mount, spool roller, spool stand, reel stand, spool bearing, spool hanger, spool spindle, spool bracket, reel arm, spool rack',
  'filament-sensor':
    'filament sensor, run out sensor, runout sensor, filament run out sensor, filament runout sensor, filament detector, filament switch, run out switch, runout switch, filament runout switch, fil sensor',
  door: '~door, enclosure door, front door, door hinge, door switch, door latch, hinge, ~latch, door seal, enclosure hinge, door magnet, door handle',
  oil: '~oil, machine oil, light oil, light machine oil, sewing machine oil, bottle of oil, oil bottle, lube oil, ptfe oil',
  grease:
    '~grease, lithium grease, tube of grease, tub of grease, rail grease, white grease, ptfe grease, grease tube, grease cartridge, screw grease, ~lube, lubricant',
  alcohol:
    '~alcohol, ipa, isopropyl, isopropyl alcohol, isopropanol, rubbing alcohol, cleaning alcohol, bottle of ipa, litre of ipa, iso, isoprop, bottle of alcohol',
  cloth:
    '~cloth, lint free cloth, microfibre cloth, microfiber cloth, lint free wipe, ~wipes, cleaning cloth, shop towel, paper towel, cleaning wipe, microfibre, microfiber, lint free cloths, ~rag, cloths',
  'air-can':
    'air can, can of air, canned air, compressed air, air duster, cans of air, can of compressed air, cans of compressed air, air cans, aerosol duster, duster can, tin of air, tins of air, duster spray, air spray, can air',
  filament:
    '~filament, fillament, filiment, fil, filament roll, filament spool, roll of filament, rolls of filament, spool of filament, spools of filament, reel of filament, reels of filament, filaments',
};
