/** What a change of a field means for the leg. */
export type Direction =
  | {
      /** The direction in which the field gets worse. */
      readonly worse: 'more' | 'less'
      /** Checks that may gain nevertheless, each with its reason. */
      readonly except?: Readonly<Record<string, string>>
    }
  /** Why the field has no direction that is bad for all that it touches. */
  | { readonly none: string }
  /** What it moves besides reserves at typical values: their ranges, the worse the wider, or the error of the foot. */
  | { readonly moves: 'range' }
  | { readonly moves: 'foot'; readonly worse: 'more' | 'less' }

type Except = Readonly<Record<string, string>>
const more = (except?: Except): Direction => ({ worse: 'more', ...(except && { except }) })
const less = (except?: Except): Direction => ({ worse: 'less', ...(except && { except }) })
const none = (reason: string): Direction => ({ none: reason })
const range: Direction = { moves: 'range' }
const foot = (worse: 'more' | 'less'): Direction => ({ moves: 'foot', worse })

const GEOMETRY = 'a length of the leg: what one joint gains another loses'
const MOUNTED = 'a larger part cools better and weighs more where it swings with the leg'
const SUPPORTED = 'of the mass of the robot, what a link weighs its foot need not carry; swinging, it must be moved'
const WARM = 'warmer plates press harder on their bolts'
const SLOWER = 'a heavier rotor or leg has a slower resonance, which a loop follows more easily'
const SLACKER = 'a slacker belt presses less on its pin'
const STRIDE = 'shape of the stride: strides that are longer, slower or flatter load one joint and spare another'
const RATIO = 'part of a ratio: torque against speed'
const GRIP = 'more grip carries more and loads its neighbours more'
const OTHER_AGE = 'read by no check: this age counts its other field'

/** The direction of every number of a leg; `*` stands for a name of the document or a joint, `#` for a place of a list. */
export const DIRECTIONS: Readonly<Record<string, Direction>> = {
  schemaVersion: none('names the layout'),

  'robot.mass': more(),
  'robot.legs': none('more legs bear less each and draw more together'),
  'robot.standHeight': none('a straighter knee bears more and has less room'),
  'robot.hipSpacing': less({
    'motor.touch': 'on the level the weight only passes to other times of the stance',
    'motorBolt.headPressure': WARM,
    'stackBolt.headPressure': WARM,
    'gear.pinionBending': 'the motor is as warm as a level walk makes it, as motor.touch',
    'gear.pinionFatigue': 'as gear.pinionBending',
  }),
  'robot.hipTrack': less(),
  'robot.centreOfMassHeight': more(),
  'robot.centreOfMassForward': none('front legs or hind legs bear more'),
  'robot.centreOfMassLeft': more(),

  'joints.*.range.lowest': none('a wider range has room for the stride and turns cords off their drums; the check of room is tried apart'),
  'joints.*.range.highest': none('as lowest'),
  'joints.*.drive.efficiency': less(),
  'joints.*.drive.centreDistance': none('longer spans stretch more, and wrap farther round'),
  'joints.*.drive.pretension': none('more holds against slack and jumping, and loads all else'),
  'joints.*.drive.pretensionScatter': range,
  'joints.*.drive.stiffness': none('a stiffer drive follows better, and resonates faster than its loop'),
  'joints.*.drive.torque': less(),
  'joints.*.drive.ratio': none(RATIO),
  'joints.*.drive.overhang': more(),
  'joints.*.drive.radialLoad': less(),
  'joints.*.drive.tiltingMoment': less(),
  'joints.*.drive.ratedTorque': less(),
  'joints.*.drive.peakTorque': less(),
  'joints.*.drive.highestSpeed': less(),
  'joints.*.drive.inertia': more({ 'controller.delay': SLOWER }),
  'joints.*.drive.mass': none('on the body in these legs, where it loads no joint'),
  'joints.*.drive.backlash': foot('more'),
  'joints.*.drive.adjustment': less(),
  'joints.*.drive.smallTeeth': none(RATIO),
  'joints.*.drive.largeTeeth': none(RATIO),
  'joints.*.drive.pinionTeeth': none(RATIO),
  'joints.*.drive.wheelTeeth': none(RATIO),
  'joints.*.drive.module': none('larger teeth are stronger, and heavier on the link'),
  'joints.*.drive.faceWidth': none('wider gears are stronger, and heavier on the link'),
  'joints.*.drive.pinion.grooveDiameter': none(RATIO),
  'joints.*.drive.pinion.length': none('room for the cord, a rule of the document'),
  'joints.*.drive.pinion.turns': less({ 'tensioner.travel': 'more turns are more cord to stretch' }),
  'joints.*.drive.drum.grooveDiameter': none(RATIO),
  'joints.*.drive.drum.bore': none('a bore takes from the wall and adds to the hub that lies on the shaft'),
  'joints.*.drive.drum.length': more(),
  'joints.*.drive.drum.groovePitch': less({ 'tensioner.travel': 'a finer pitch winds a shorter helix' }),
  'joints.*.drive.drum.runout': foot('more'),
  'joints.*.drive.drum.throughBolts': none('bolts clamp the layers of the hub, and their holes weaken it'),
  'joints.*.drive.drum.throughBoltClampLoad': none('acts with through-bolts, which these legs have none of'),
  'joints.*.drive.friction.low': range,
  'joints.*.drive.friction.typical': none(GRIP),
  'joints.*.drive.friction.high': range,
  'joints.*.drive.anchor.postDiameter': none('a thicker post bears on more and leaves less round it'),
  'joints.*.drive.anchor.postLength': less(),
  'joints.*.drive.anchor.edgeDistance': less(),
  'joints.*.drive.tensioner.travel': less(),
  'joints.*.drive.tensioner.slackAtAssembly': more(),
  'joints.*.through.crank': none(GEOMETRY),
  'joints.*.through.rocker': none(GEOMETRY),
  'joints.*.through.rod': none(GEOMETRY),
  'joints.*.through.rockerAngle': none(GEOMETRY),
  'joints.*.through.diameter': less(),
  'joints.*.through.mass': none(SUPPORTED),
  'joints.*.through.planeOffset': more(),
  'joints.*.through.pinPlanesApart': more(),
  'joints.*.through.step': more(),

  'links.hipOffset': none('wider feet tip less and load the sideways hip more'),
  'links.*.length': none(GEOMETRY),
  'links.*.mass': none(SUPPORTED),
  'links.*.section.box.width': less(),
  'links.*.section.box.depth': less(),
  'links.*.section.wall': less(),

  'motors.*.speedConstant': none('torque for each ampere against speed for each volt'),
  'motors.*.terminalResistance': more({ 'motorBolt.slip': WARM }),
  'motors.*.noLoadCurrent': more(),
  'motors.*.noLoadVoltage': more(),
  'motors.*.polePairs': more(),
  'motors.*.phaseInductance': more(),
  'motors.*.encoderCounts': foot('less'),
  'motors.*.encoderAccuracy': foot('more'),
  'motors.*.rotorInertia': more({ 'controller.delay': SLOWER, 'motorBolt.slip': WARM }),
  'motors.*.mass': none('a heavier motor warms more slowly and weighs more'),
  'motors.*.specificHeat': less(),
  'motors.*.canDiameter': less(),
  'motors.*.canLength': less(),
  'motors.*.mountInnerDiameter': more(),
  'motors.*.mountOuterDiameter': none('a larger ring of contact spreads heat and covers what cools'),
  'motors.*.tapDepth': less(),
  'motors.*.windingToMount': more(),
  'motors.*.mountToCan': none('a can that is held back from the mount is cooler to the touch, and its motor warmer'),
  'motors.*.canEmissivity': less(),

  'controllers.*.onResistance': more(),
  'controllers.*.switchingLoss': more(),
  'controllers.*.currentLimit': less(),
  'controllers.*.temperatureLimit': less({
    'motor.speed': 'its transistors count as hot as it may be, with more resistance',
    'motor.swing': 'as motor.speed',
    'supply.current': 'as motor.speed',
  }),
  'controllers.*.toAir': more(),
  'controllers.*.loopRate': less(),
  'controllers.*.busDelay': more(),
  'controllers.*.mass': none('on the body, where it loads no joint'),

  'plates.*.distance': none('what hangs farther out weighs more about the joint; its inertia slows the resonance'),
  'plates.*.thickness': none(MOUNTED),
  'plates.*.size.width': none(MOUNTED),
  'plates.*.size.height': none(MOUNTED),
  'plates.*.emissivity': less(),
  'plates.*.contactConductance': less(),
  'plates.*.sink.thickness': none(MOUNTED),
  'plates.*.sink.size.width': none(MOUNTED),
  'plates.*.sink.size.height': none(MOUNTED),
  'plates.*.sink.emissivity': less(),

  'cords.*.diameter': none('a thicker cord lies softer in its groove, bends harder and moves the centre line'),
  'cords.*.breakingStrength': less(),
  'cords.*.axialRigidity': none('a stiffer cord stretches less, and gains and loses more by heat'),
  'cords.*.thermalExpansion': less(),
  'cords.*.designFactor': more(),
  'cords.*.leastBendRatio': more(),
  'cords.*.pretensionLeft.low': range,
  'cords.*.pretensionLeft.typical': less(),
  'cords.*.pretensionLeft.high': range,
  'belts.*.teeth': none('the length that fits the distance of the axes'),
  'belts.*.pitch': none('larger teeth are stronger and need larger pulleys'),
  'belts.*.width': none('a wider belt is stronger, and its pulleys are heavier'),
  'belts.*.massPerLength': none(SUPPORTED),
  'belts.*.axialRigidity': none('a stiffer belt stretches less, and gains and loses more by heat'),
  'belts.*.allowableTension': less(),
  'belts.*.breakingStrength': less(),
  'belts.*.toothForce': less(),
  'belts.*.mostTeeth': less(),
  'belts.*.leastTeeth': more(),
  'belts.*.highestTemperature': less(),
  'belts.*.flankAngle': more(),
  'belts.*.toothHeight': more(),
  'belts.*.toothRootWidth': more(),
  'belts.*.clearance': foot('more'),
  'belts.*.friction.low': range,
  'belts.*.friction.typical': less(),
  'belts.*.friction.high': range,
  'belts.*.thermalExpansion': less({ 'boss.prised': SLACKER }),
  'belts.*.pretensionLeft.low': range,
  'belts.*.pretensionLeft.typical': less({ 'boss.prised': SLACKER }),
  'belts.*.pretensionLeft.high': range,

  'pins.*.strength': less(),
  'pins.*.cheekThickness': none('a wider fork bends its pin more, and holds a couple across the leg with less force'),
  'pins.*.lugThickness': none('a thicker lug bears on more, and bends its pin over a longer span'),
  'pins.*.gap': none('as the thickness of the cheeks'),
  'bosses.*.outerDiameter': less(),
  'bosses.*.hole': none('a tight hole splits, a loose one does not hold'),
  'bosses.*.holeScatter': more(),
  'bosses.*.engagement': less(),
  'bosses.*.edgeDistance': less(),
  'bolts.*.count': less(),
  'bolts.*.tighteningTorque': none('a tighter bolt holds more and is nearer to its own limit'),
  'bolts.*.friction': none('a rough thread turns torque into less preload: nearer to slip, farther from its limit'),
  'bolts.*.stack.#.thickness': none('a longer bolt is softer, and reaches less deep into its thread'),
  'bolts.*.pattern.diameter': less(),
  'bolts.*.pattern.distances.#': less(),
  'bolts.*.pattern.leverArm': more(),
  'shafts.*.innerEngagement': less(),
  'shafts.*.innerTighteningTorque': more(),
  'shafts.*.capThickness': less(),
  'shafts.*.capSpan': more(),
  'bearings.*.spacing': less(),
  'bearings.*.overhang': more(),
  'bearings.*.seatInterference': none('a tight seat splits, a loose one lets its ring go'),
  'bearings.*.own.bore': none('bore and shaft belong together'),
  'bearings.*.own.outerDiameter': less(),
  'bearings.*.own.width': none('takes room, and is read by no check'),
  'bearings.*.own.staticRating': less(),
  'bearings.*.own.dynamicRating': less(),

  'foot.count': less(),
  'foot.length': more(),
  'foot.thickness': less(),
  'foot.width': less(),
  'foot.lift': less(),
  'foot.groundFriction.low': range,
  'foot.groundFriction.typical': less(),
  'foot.groundFriction.high': range,
  'supply.voltage': less(),
  'supply.internalResistance': more(),
  'supply.currentLimit': less(),
  'supply.electronics': more(),
  'supply.usableShare': none('the running time of the whole robot alone'),
  'prints.*.lineWidth': less(),
  'prints.*.walls': less(),
  'prints.*.infill': none('a step: infill too sparse for threads and seats is judged at its limit; tried apart'),
  'environment.assemblyTemperature': none('cold or heat since assembly: the farther, the worse, either way'),
  'environment.coolingFactor.low': range,
  'environment.coolingFactor.typical': less(),
  'environment.coolingFactor.high': range,
  'environment.altitude': more(),
  'environment.humidity': none('acts on materials with values of their wet state, which these legs have none of; tried apart'),

  'gaits.*.speed': none(STRIDE),
  'gaits.*.dutyFactor': none(STRIDE),
  'gaits.*.stepLength': none(STRIDE),
  'gaits.*.clearance': none(STRIDE),
  'gaits.*.traction.lowest': less(),
  'gaits.*.traction.highest': more(),
  'gaits.*.lateral': more(),
  'usage.requiredReserve': none('the reserve that is asked for'),
  'usage.standingTime': more(),
  'usage.walkingTime': more(),
  'usage.stridesPerDay': more(),

  'loadCases.ages.season.time': none('time that creep of clamped layers without sleeves counts; tried apart'),
  'loadCases.ages.season.daysWalked': more(),
  'loadCases.ages.aged.time': more(),
  'loadCases.ages.aged.daysWalked': none(OTHER_AGE),
  'loadCases.ages.new.time': none(OTHER_AGE),
  'loadCases.ages.new.daysWalked': none(OTHER_AGE),
  'loadCases.airs.normal.temperature': more(),
  'loadCases.airs.hot.temperature': more(),
  'loadCases.airs.cold.temperature': less(),
  'loadCases.airs.shelf.temperature': more(),
  'loadCases.airs.normal.wind': less(),
  'loadCases.airs.hot.wind': less(),
  'loadCases.airs.cold.wind': less(),
  'loadCases.airs.shelf.wind': none('a leg on the shelf makes no heat'),
  'loadCases.events.hop.height': more(),
  'loadCases.events.hop.travel': none('a longer travel lowers the force and folds the leg farther'),
  'loadCases.events.hop.touchDownHeight': less({
    'leg.reach': 'a leg that touches down bent is far from its reach',
    'leg.range': 'as leg.reach',
  }),
  'loadCases.events.hop.traction': more(),
  'loadCases.events.hop.lateral': more(),
  'loadCases.events.drop.height': more(),
  'loadCases.events.drop.feet': less(),
  'loadCases.events.drop.travel': none('as that of the hop'),
  'loadCases.events.drop.touchDownHeight': less(),
  'loadCases.events.drop.traction': more(),
  'loadCases.events.drop.lateral': more(),
  'loadCases.events.slopeUp.angle': more(),
  'loadCases.events.slopeDown.angle': less(),
  'loadCases.events.slopeAcross.angle': more(),
  'loadCases.events.stall.time': more(),
}

/** The row of the table for a number of a leg. */
export const patternOf = (place: readonly string[]): string =>
  place
    .join('.')
    .replace(/^joints\.[^.]+/, 'joints.*')
    .replace(/^links\.(upper|lower)/, 'links.*')
    .replace(/^(motors|controllers|plates|pins|bosses|bolts|shafts|bearings|cords|belts|prints|gaits)\.[^.]+/, '$1.*')
    .replace(/\.(stack|distances)\.\d+/, '.$1.#')
