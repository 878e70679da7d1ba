/**
 * How formulas without an equation in closed form find their results: what to do by hand, or in a table calculation, with the numbers of the sheet. A formula
 * that has governing equations besides prints them, and its results satisfy them.
 */
export const PROCEDURES: Readonly<Record<string, string>> = {
  'capstan.driveWindup':
    'guess the tension of the taut span; that of the slack span is less by torque over drum radius. From each span the tension falls on both pulleys as the friction law says, up to where it is the pretension. Stretch beyond the pretension of span and arcs, tension over axial rigidity, adds up for each branch. The right guess has as much stretch in one branch as the other lost. The windup is that stretch over the drum radius.',
  'capstan.travelLimits':
    'as drive windup, at the end of travel where the arcs on the drum differ most: the slip torque is the one at which the tension of the slack span times the growth by friction over the whole arc of the pinion is that of the taut span; the slack torque is the one at which the slack span keeps one per cent of the pretension. The lower one comes first.',
  'fasteners.bearingEquivalentLoad':
    'take e and Y of the table of ISO 281 for single-row deep-groove ball bearings at axial factor times axial load over static rating, straight between its rows. Where the axial load is above e times the radial load, the dynamic load is 0.56 times the radial load plus Y times the axial load; elsewhere it is the radial load.',
  'fasteners.boltCompliance':
    'lengths over modulus and area, in series: the head counts 0.4 diameters (socket) or 0.5 (hexagon) and the shank on the nominal area; free thread and half a diameter on the root area; then 0.4 diameters of a nut, or 0.33 diameters of a tapped part at its own modulus, on the nominal area.',
  'fasteners.bearingLife':
    'turns are 10⁶ times (dynamic rating over load)³, times 1 for a reliability of 90 %, 0.64 for 95 %, 0.55 for 96 %, 0.47 for 97 %, 0.37 for 98 %, 0.25 for 99 %.',
  'fasteners.threadStrip':
    'sheared area per length: of the part π · D / p · (p / 2 + tan 30° · (D − d2)) with the major diameter D of the screw and the pitch diameter d2 of the part; of the screw π · D1 / p · (p / 2 + tan 30° · (d2 − D1)) with the minor diameter D1 of the part and the pitch diameter d2 of the screw. Limits worst: the screw as small and the part as large as the tolerances of the thread allow.',
  'fasteners.isoTolerance':
    'the tolerance grade of ISO 286-1 table 1 for the diameter, and the fundamental deviation of its tables 4 and 5 for the letter; for the zones that ISO 286-2 lists, its limits.',
  'fasteners.memberCompliance':
    'cones of pressure widen with the half angle from the bearing under the head and from that under the nut, up to where they meet. In each piece of a layer the compliance is that of a hollow cone, or of a sleeve where the outer diameter of the layer ends the cone; pieces in series add up.',
  'fasteners.nutInPocket':
    'turn the hexagon of the nut in the hexagon of the pocket until the moment of the overlap is largest. Pressure that is uniform over the overlap gives the rounding torque, pressure that rises linearly towards the corners the yield torque.',
  'fasteners.preloadFromTorque':
    'slope is the pitch over π times the pitch diameter, and μ the thread friction over the cosine of half the thread angle (30°). The torque that a preload of 1 N needs is half the pitch diameter times (μ + slope) / (1 − μ · slope), plus the head friction times a quarter of the sum of bearing diameter and hole diameter. The preload is the torque beyond the prevailing torque over that.',
  'kinematics.fourBarKneePose':
    'the rocker stands at its angle at a straight knee plus the knee angle, from the line hip to knee. The crank pin is where a circle of the crank about the hip meets a circle of the coupler about the rocker pin, on the side that is named. The ratio is the change of the crank angle over that of the knee angle.',
  'kinematics.fourBarDeadPoint':
    'crank and coupler in line, stretched or folded, give a triangle with rocker and ground; rocker and coupler in line give one with crank and ground. The law of cosines gives the angle of the rocker in each. The margin is the least way of the knee from its limits to one of these angles on the side that is named.',
  'kinematics.springOverTravel':
    'place both ends at each end of the travel, and at each angle between at which they are on one line through the axis, and measure their distance: the shortest and the longest of these count.',
  'kinematics.walkingShares':
    'draw the feet that stand at a moment, seen from above, each as far along its step as its stance has passed. Three feet share the weight by the areas of the triangles that the weight makes with the other two. More than three share it as a plane over the feet that balances the weight and its moments. Where the weight is outside all of them, the two feet of the nearest edge share it by the lever rule. The largest share in each twelfth of the stance counts.',
  'leg.strideLoads':
    'at twelve moments of stance, at the ends of its twelfths, at twelve moments of swing, and where parabolas through these find a torque, a speed or an angle of the swing to be largest: the foot is on its path, the joints stand at the angles that reach it (law of cosines), the force across the ground follows the stated shape or the shares of the feet, and the force along it is at its worst end. Torque of a joint: moment of the force on the foot about the joint, plus weight and inertia of the links with what is on them. The largest over the stride and the root mean square are the results. What the force across the leg does to its links follows the formula lateral foot force in every moment of the stance. Beside springs the drives hold the torque of the joint less that of the spring at its angle, with the foot loaded and with the foot lifted. In a landing they are calculated without any spring as well, and each bears the larger.',
  'materials.findleyRelaxationModulus':
    'x is the creep coefficient times the gamma function of 1 + exponent, times (time over reference time) to the exponent. The result is the modulus times the sum over k from 0 of (−x)^k over the gamma function of 1 + k · exponent (Mittag-Leffler function).',
  'materials.springWire':
    'strength of a wire of 1 mm times its diameter in mm to a power: music wire 2060 MPa and −0.163, hard-drawn 1510 MPa and −0.201, oil-tempered 1610 MPa and −0.193, stainless 1867 MPa and −0.146. Moduli and density by the kind of wire: 206 and 81.5 GPa (oil-tempered 79.5 GPa), 7850 kg/m³; stainless 180 and 70 GPa, 7900 kg/m³.',
  'materials.tabulatedStrengthFactor':
    'straight between the two temperatures of the list next to the given one; the first share below the list, 0 above it.',
  'structures.torsionSpringTorque':
    'the spring is wound by the angle of the joint beyond its free angle, the way that winds it; on the other side by nothing. Its torque is the rate times that, against the way it is wound.',
  'thermal.canLaw':
    'at each rise of the mounting face the film on the can (formula surface coefficient) and the temperature of the can settle to each other. Coefficient k of a law over the Chebyshev polynomials T, from order 0: the logarithm of the conductance in W/K is their sum at u. On a logarithmic scale u runs from −1 to 1 while the rise goes from 0.01 to 450 K. The rise of the can over that of the face, and the share that radiates, are such sums without a logarithm.',
  'thermal.motorBalance':
    'guess the temperature of the mounting face. The laws of mount and can give the conductance at that rise, and the temperature of the can. The back EMF is the constant times 1 + magnet coefficient · (can − 293.15 K). The loss at 20 °C is (torque / back EMF)² · terminal resistance; the loss is that times (winding − 293.15 K + 254.5 K) / 254.5 K, and the winding is the mounting face + winding to mount · loss. The right guess sheds by both laws what copper and other losses bring in.',
  'thermal.motorStall':
    'as motor balance, in steps of time: what the losses bring in beyond what leaves by the laws of mount and can and through the store conductance warms the capacity of the motor; what goes through the store conductance warms the store of the plate.',
  'thermal.runawayTorque':
    'guess the temperature of the mounting face. The heat that leaves by both laws less the other losses is the loss. The winding is the mounting face + winding to mount · loss; the loss at 20 °C is the loss · 254.5 K / (winding − 293.15 K + 254.5 K). The torque is the back EMF at the temperature of the can times the root of that loss over the terminal resistance. The guess with the largest torque is the right one.',
  'thermal.mountLaw':
    'at each rise the film on both faces (formula surface coefficient, upright plate at its mean temperature) and the resistance of the plate by its law settle to each other. The coefficients are those of the logarithm of the conductance over the logarithm of the rise, as in the can law.',
  'thermal.plateLaw':
    'the resistance from the ring to the air by the series of the plate at 9 films from 0.5 to 200 W/(m² K), the same film on both faces. The coefficients are those of its logarithm over the logarithm of the film, as in the can law. The mean is one over film times cooled area.',
  'thermal.plateStore':
    'the series of the plate with its storage at two rates of growth. Rate over the extra conductance is a straight line over the rate: its value at 0 is one over the capacity, its slope one over the conductance.',
}
