export declare const KINDS: {
    readonly ratio: {
        readonly dim: number;
        readonly units: {
            readonly '1': 1;
            readonly '%': 0.01;
            readonly ppm: 0.000001;
        };
        readonly show: readonly ["1"];
    };
    readonly count: {
        readonly dim: number;
        readonly units: {
            readonly '1': 1;
        };
        readonly show: readonly ["1"];
    };
    readonly strain: {
        readonly dim: number;
        readonly units: {
            readonly '1': 1;
            readonly '%': 0.01;
            readonly ppm: 0.000001;
            readonly 'mm/m': 0.001;
            readonly 'um/m': 0.000001;
        };
        readonly show: readonly ["%"];
    };
    readonly angle: {
        readonly dim: number;
        readonly units: {
            readonly rad: 1;
            readonly mrad: 0.001;
            readonly urad: 0.000001;
            readonly deg: number;
            readonly turn: number;
            readonly arcmin: number;
            readonly arcsec: number;
        };
        readonly show: readonly ["deg"];
    };
    readonly length: {
        readonly dim: number;
        readonly units: {
            readonly m: 1;
            readonly µm: 0.000001;
            readonly um: 0.000001;
            readonly mm: 0.001;
            readonly cm: 0.01;
            readonly km: 1000;
            readonly nm: 1e-9;
            readonly mil: number;
            readonly in: 0.0254;
            readonly ft: number;
        };
        readonly show: readonly ["µm", "mm", "m"];
    };
    readonly area: {
        readonly dim: number;
        readonly units: {
            readonly 'm^2': 1;
            readonly 'mm^2': 0.000001;
            readonly 'cm^2': 0.0001;
            readonly 'um^2': 1e-12;
            readonly 'in^2': number;
        };
        readonly show: readonly ["mm^2"];
    };
    readonly volume: {
        readonly dim: number;
        readonly units: {
            readonly 'm^3': 1;
            readonly 'mm^3': 1e-9;
            readonly 'cm^3': 0.000001;
            readonly 'nm^3': 1e-27;
            readonly L: 0.001;
            readonly mL: 0.000001;
            readonly 'in^3': number;
        };
        readonly show: readonly ["mm^3", "cm^3"];
    };
    readonly curvature: {
        readonly dim: number;
        readonly units: {
            readonly '1/m': 1;
            readonly '1/mm': 1000;
        };
        readonly show: readonly ["1/m"];
    };
    readonly secondMomentOfArea: {
        readonly dim: number;
        readonly units: {
            readonly 'm^4': 1;
            readonly 'mm^4': 1e-12;
            readonly 'cm^4': 1e-8;
            readonly 'in^4': number;
        };
        readonly show: readonly ["mm^4"];
    };
    readonly sectionModulus: {
        readonly dim: number;
        readonly units: {
            readonly 'm^3': 1;
            readonly 'mm^3': 1e-9;
            readonly 'cm^3': 0.000001;
            readonly 'in^3': number;
        };
        readonly show: readonly ["mm^3"];
    };
    readonly time: {
        readonly dim: number;
        readonly units: {
            readonly s: 1;
            readonly us: 0.000001;
            readonly ms: 0.001;
            readonly min: 60;
            readonly h: 3600;
            readonly day: 86400;
            readonly week: 604800;
            readonly year: 31557600;
        };
        readonly show: readonly ["us", "ms", "s", "min", "h", "day"];
    };
    readonly frequency: {
        readonly dim: number;
        readonly units: {
            readonly Hz: 1;
            readonly kHz: 1000;
            readonly MHz: 1000000;
        };
        readonly show: readonly ["Hz", "kHz"];
    };
    readonly rate: {
        readonly dim: number;
        readonly units: {
            readonly '1/s': 1;
            readonly '1/min': number;
            readonly '1/h': number;
            readonly '1/day': number;
            readonly '1/year': number;
        };
        readonly show: readonly ["1/s"];
    };
    readonly strainRate: {
        readonly dim: number;
        readonly units: {
            readonly '1/s': 1;
            readonly '%/s': 0.01;
            readonly '%/min': number;
            readonly '%/h': number;
            readonly '%/day': number;
        };
        readonly show: readonly ["1/s"];
    };
    readonly velocity: {
        readonly dim: number;
        readonly units: {
            readonly 'm/s': 1;
            readonly 'mm/s': 0.001;
            readonly 'km/h': number;
            readonly 'm/min': number;
            readonly 'mm/min': number;
            readonly 'in/s': 0.0254;
            readonly 'ft/s': number;
            readonly 'ft/min': number;
        };
        readonly show: readonly ["mm/s", "m/s"];
    };
    readonly acceleration: {
        readonly dim: number;
        readonly units: {
            readonly 'm/s^2': 1;
            readonly 'mm/s^2': 0.001;
            readonly gn: 9.80665;
            readonly 'ft/s^2': number;
        };
        readonly show: readonly ["m/s^2"];
    };
    readonly jerk: {
        readonly dim: number;
        readonly units: {
            readonly 'm/s^3': 1;
        };
        readonly show: readonly ["m/s^3"];
    };
    readonly angularVelocity: {
        readonly dim: number;
        readonly units: {
            readonly 'rad/s': 1;
            readonly 'deg/s': number;
            readonly 'turn/s': number;
            readonly rpm: number;
        };
        readonly show: readonly ["rad/s"];
    };
    readonly angularAcceleration: {
        readonly dim: number;
        readonly units: {
            readonly 'rad/s^2': 1;
            readonly 'deg/s^2': number;
        };
        readonly show: readonly ["rad/s^2"];
    };
    readonly mass: {
        readonly dim: number;
        readonly units: {
            readonly kg: 1;
            readonly mg: 0.000001;
            readonly g: 0.001;
            readonly t: 1000;
            readonly lb: 0.45359237;
            readonly oz: number;
        };
        readonly show: readonly ["mg", "g", "kg"];
    };
    readonly massPerLength: {
        readonly dim: number;
        readonly units: {
            readonly 'kg/m': 1;
            readonly 'g/m': 0.001;
            readonly 'g/km': 0.000001;
            readonly tex: 0.000001;
            readonly dtex: 1e-7;
            readonly 'lb/ft': number;
        };
        readonly show: readonly ["g/m", "kg/m"];
    };
    readonly density: {
        readonly dim: number;
        readonly units: {
            readonly 'kg/m^3': 1;
            readonly 'g/cm^3': 1000;
            readonly 'lb/in^3': number;
        };
        readonly show: readonly ["kg/m^3"];
    };
    readonly momentOfInertia: {
        readonly dim: number;
        readonly units: {
            readonly 'kg m^2': 1;
            readonly 'kg mm^2': 0.000001;
            readonly 'kg cm^2': 0.0001;
            readonly 'g mm^2': 1e-9;
            readonly 'g cm^2': 1e-7;
            readonly 'lb in^2': number;
        };
        readonly show: readonly ["g mm^2", "kg mm^2", "kg m^2"];
    };
    readonly impulse: {
        readonly dim: number;
        readonly units: {
            readonly 'N s': 1;
        };
        readonly show: readonly ["N s"];
    };
    readonly force: {
        readonly dim: number;
        readonly units: {
            readonly N: 1;
            readonly mN: 0.001;
            readonly kN: 1000;
            readonly MN: 1000000;
            readonly kgf: 9.80665;
            readonly lbf: number;
            readonly ozf: number;
            readonly kip: number;
        };
        readonly show: readonly ["mN", "N", "kN"];
    };
    readonly forcePerLength: {
        readonly dim: number;
        readonly units: {
            readonly 'N/m': 1;
            readonly 'N/mm': 1000;
            readonly 'kN/m': 1000;
            readonly 'lbf/in': number;
        };
        readonly show: readonly ["N/mm"];
    };
    readonly torque: {
        readonly dim: number;
        readonly units: {
            readonly 'N m': 1;
            readonly 'N mm': 0.001;
            readonly 'mN m': 0.001;
            readonly 'N cm': 0.01;
            readonly 'kN m': 1000;
            readonly 'kgf cm': number;
            readonly 'lbf in': number;
            readonly 'lbf ft': number;
            readonly 'ozf in': number;
        };
        readonly show: readonly ["N mm", "N m", "kN m"];
    };
    readonly stress: {
        readonly dim: number;
        readonly units: {
            readonly Pa: 1;
            readonly kPa: 1000;
            readonly MPa: 1000000;
            readonly GPa: 1000000000;
            readonly 'N/mm^2': 1000000;
            readonly bar: 100000;
            readonly mbar: 100;
            readonly psi: number;
            readonly ksi: number;
            readonly Mpsi: number;
        };
        readonly show: readonly ["Pa", "kPa", "MPa", "GPa"];
    };
    readonly stressRate: {
        readonly dim: number;
        readonly units: {
            readonly 'Pa/s': 1;
            readonly 'MPa/s': 1000000;
            readonly 'MPa/min': number;
        };
        readonly show: readonly ["MPa/s"];
    };
    readonly modulus: {
        readonly dim: number;
        readonly units: {
            readonly Pa: 1;
            readonly kPa: 1000;
            readonly MPa: 1000000;
            readonly GPa: 1000000000;
            readonly 'N/mm^2': 1000000;
            readonly bar: 100000;
            readonly mbar: 100;
            readonly psi: number;
            readonly ksi: number;
            readonly Mpsi: number;
        };
        readonly show: readonly ["MPa", "GPa"];
    };
    readonly creepCompliance: {
        readonly dim: number;
        readonly units: {
            readonly '1/Pa': 1;
            readonly '1/MPa': 0.000001;
            readonly '1/GPa': 1e-9;
        };
        readonly show: readonly ["1/GPa", "1/MPa"];
    };
    readonly axialRigidity: {
        readonly dim: number;
        readonly units: {
            readonly N: 1;
            readonly mN: 0.001;
            readonly kN: 1000;
            readonly MN: 1000000;
            readonly kgf: 9.80665;
            readonly lbf: number;
            readonly ozf: number;
            readonly kip: number;
        };
        readonly show: readonly ["N", "kN"];
    };
    readonly bendingRigidity: {
        readonly dim: number;
        readonly units: {
            readonly 'N m^2': 1;
            readonly 'N mm^2': 0.000001;
            readonly 'lbf in^2': number;
        };
        readonly show: readonly ["N mm^2", "N m^2"];
    };
    readonly foundationModulus: {
        readonly dim: number;
        readonly units: {
            readonly 'N/m^2': 1;
            readonly 'N/mm^2': 1000000;
            readonly MPa: 1000000;
        };
        readonly show: readonly ["N/mm^2"];
    };
    readonly linearStiffness: {
        readonly dim: number;
        readonly units: {
            readonly 'N/m': 1;
            readonly 'N/mm': 1000;
            readonly 'kN/mm': 1000000;
            readonly 'MN/m': 1000000;
            readonly 'lbf/in': number;
            readonly 'Mlbf/in': number;
        };
        readonly show: readonly ["N/m", "N/mm", "kN/mm"];
    };
    readonly linearCompliance: {
        readonly dim: number;
        readonly units: {
            readonly 'm/N': 1;
            readonly 'mm/N': 0.001;
            readonly 'um/N': 0.000001;
        };
        readonly show: readonly ["um/N", "mm/N"];
    };
    readonly torsionalStiffness: {
        readonly dim: number;
        readonly units: {
            readonly 'N m/rad': 1;
            readonly 'kN m/rad': 1000;
            readonly 'N mm/rad': 0.001;
            readonly 'N m/deg': number;
            readonly 'lbf in/rad': number;
            readonly 'lbf in/deg': number;
        };
        readonly show: readonly ["N m/rad"];
    };
    readonly torsionalCompliance: {
        readonly dim: number;
        readonly units: {
            readonly 'rad/(N m)': 1;
            readonly 'mrad/(N m)': 0.001;
            readonly 'deg/(N m)': number;
        };
        readonly show: readonly ["mrad/(N m)"];
    };
    readonly linearDamping: {
        readonly dim: number;
        readonly units: {
            readonly 'N s/m': 1;
            readonly 'N s/mm': 1000;
        };
        readonly show: readonly ["N s/m"];
    };
    readonly torsionalDamping: {
        readonly dim: number;
        readonly units: {
            readonly 'N m s/rad': 1;
            readonly 'N mm s/rad': 0.001;
        };
        readonly show: readonly ["N mm s/rad", "N m s/rad"];
    };
    readonly tenacity: {
        readonly dim: number;
        readonly units: {
            readonly 'N/(kg/m)': 1;
            readonly 'N/tex': 1000000;
            readonly 'cN/dtex': 100000;
            readonly 'cN/tex': 10000;
        };
        readonly show: readonly ["N/tex"];
    };
    readonly energy: {
        readonly dim: number;
        readonly units: {
            readonly J: 1;
            readonly mJ: 0.001;
            readonly uJ: 0.000001;
            readonly kJ: 1000;
            readonly 'W h': 3600;
            readonly eV: 1.602176634e-19;
            readonly 'lbf ft': number;
        };
        readonly show: readonly ["uJ", "mJ", "J", "kJ"];
    };
    readonly power: {
        readonly dim: number;
        readonly units: {
            readonly W: 1;
            readonly mW: 0.001;
            readonly kW: 1000;
            readonly hp: number;
        };
        readonly show: readonly ["mW", "W", "kW"];
    };
    readonly activationEnergy: {
        readonly dim: number;
        readonly units: {
            readonly 'J/mol': 1;
            readonly 'kJ/mol': 1000;
        };
        readonly show: readonly ["kJ/mol"];
    };
    readonly pressureVelocity: {
        readonly dim: number;
        readonly units: {
            readonly 'Pa m/s': 1;
            readonly 'MPa m/s': 1000000;
        };
        readonly show: readonly ["MPa m/s"];
    };
    readonly specificWearRate: {
        readonly dim: number;
        readonly units: {
            readonly 'm^3/(N m)': 1;
            readonly 'mm^3/(N m)': 1e-9;
        };
        readonly show: readonly ["mm^3/(N m)"];
    };
    readonly temperature: {
        readonly dim: number;
        readonly units: {
            readonly K: 1;
            readonly degC: readonly [1, 273.15];
            readonly '\u00B0C': readonly [1, 273.15];
            readonly degF: readonly [number, number];
        };
        readonly show: readonly ["degC"];
    };
    readonly glassTransitionTemperature: {
        readonly dim: number;
        readonly units: {
            readonly K: 1;
            readonly degC: readonly [1, 273.15];
            readonly '\u00B0C': readonly [1, 273.15];
            readonly degF: readonly [number, number];
        };
        readonly show: readonly ["degC"];
    };
    readonly heatDeflectionTemperature045: {
        readonly dim: number;
        readonly units: {
            readonly K: 1;
            readonly degC: readonly [1, 273.15];
            readonly '\u00B0C': readonly [1, 273.15];
            readonly degF: readonly [number, number];
        };
        readonly show: readonly ["degC"];
    };
    readonly heatDeflectionTemperature180: {
        readonly dim: number;
        readonly units: {
            readonly K: 1;
            readonly degC: readonly [1, 273.15];
            readonly '\u00B0C': readonly [1, 273.15];
            readonly degF: readonly [number, number];
        };
        readonly show: readonly ["degC"];
    };
    readonly vicatTemperature: {
        readonly dim: number;
        readonly units: {
            readonly K: 1;
            readonly degC: readonly [1, 273.15];
            readonly '\u00B0C': readonly [1, 273.15];
            readonly degF: readonly [number, number];
        };
        readonly show: readonly ["degC"];
    };
    readonly meltingTemperature: {
        readonly dim: number;
        readonly units: {
            readonly K: 1;
            readonly degC: readonly [1, 273.15];
            readonly '\u00B0C': readonly [1, 273.15];
            readonly degF: readonly [number, number];
        };
        readonly show: readonly ["degC"];
    };
    readonly serviceTemperature: {
        readonly dim: number;
        readonly units: {
            readonly K: 1;
            readonly degC: readonly [1, 273.15];
            readonly '\u00B0C': readonly [1, 273.15];
            readonly degF: readonly [number, number];
        };
        readonly show: readonly ["degC"];
    };
    readonly temperatureDifference: {
        readonly dim: number;
        readonly units: {
            readonly K: 1;
            readonly mK: 0.001;
            readonly degR: number;
        };
        readonly show: readonly ["K"];
    };
    readonly temperatureRate: {
        readonly dim: number;
        readonly units: {
            readonly 'K/s': 1;
            readonly 'K/min': number;
            readonly 'K/h': number;
        };
        readonly show: readonly ["K/min"];
    };
    readonly thermalExpansion: {
        readonly dim: number;
        readonly units: {
            readonly '1/K': 1;
            readonly 'ppm/K': 0.000001;
            readonly '1/degR': 1.8;
        };
        readonly show: readonly ["ppm/K"];
    };
    readonly temperatureCoefficient: {
        readonly dim: number;
        readonly units: {
            readonly '1/K': 1;
            readonly '%/K': 0.01;
        };
        readonly show: readonly ["%/K"];
    };
    readonly thermalConductivity: {
        readonly dim: number;
        readonly units: {
            readonly 'W/(m K)': 1;
            readonly 'mW/(m K)': 0.001;
        };
        readonly show: readonly ["W/(m K)"];
    };
    readonly specificHeat: {
        readonly dim: number;
        readonly units: {
            readonly 'J/(kg K)': 1;
            readonly 'kJ/(kg K)': 1000;
            readonly 'J/(g K)': 1000;
        };
        readonly show: readonly ["J/(kg K)"];
    };
    readonly heatCapacity: {
        readonly dim: number;
        readonly units: {
            readonly 'J/K': 1;
            readonly 'kJ/K': 1000;
        };
        readonly show: readonly ["J/K"];
    };
    readonly thermalResistance: {
        readonly dim: number;
        readonly units: {
            readonly 'K/W': 1;
            readonly 'mK/W': 0.001;
        };
        readonly show: readonly ["K/W"];
    };
    readonly thermalConductance: {
        readonly dim: number;
        readonly units: {
            readonly 'W/K': 1;
            readonly 'mW/K': 0.001;
        };
        readonly show: readonly ["mW/K", "W/K"];
    };
    readonly heatTransferCoefficient: {
        readonly dim: number;
        readonly units: {
            readonly 'W/(m^2 K)': 1;
        };
        readonly show: readonly ["W/(m^2 K)"];
    };
    readonly thermalContactResistance: {
        readonly dim: number;
        readonly units: {
            readonly 'm^2 K/W': 1;
            readonly 'mm^2 K/W': 0.000001;
        };
        readonly show: readonly ["mm^2 K/W"];
    };
    readonly heatFlux: {
        readonly dim: number;
        readonly units: {
            readonly 'W/m^2': 1;
            readonly 'kW/m^2': 1000;
        };
        readonly show: readonly ["W/m^2"];
    };
    readonly thermalDiffusivity: {
        readonly dim: number;
        readonly units: {
            readonly 'm^2/s': 1;
            readonly 'mm^2/s': 0.000001;
            readonly 'cm^2/s': 0.0001;
        };
        readonly show: readonly ["mm^2/s"];
    };
    readonly massDiffusivity: {
        readonly dim: number;
        readonly units: {
            readonly 'm^2/s': 1;
            readonly 'mm^2/s': 0.000001;
            readonly 'cm^2/s': 0.0001;
        };
        readonly show: readonly ["m^2/s"];
    };
    readonly kinematicViscosity: {
        readonly dim: number;
        readonly units: {
            readonly 'm^2/s': 1;
            readonly 'mm^2/s': 0.000001;
            readonly 'cm^2/s': 0.0001;
        };
        readonly show: readonly ["m^2/s"];
    };
    readonly dynamicViscosity: {
        readonly dim: number;
        readonly units: {
            readonly 'Pa s': 1;
            readonly 'mPa s': 0.001;
        };
        readonly show: readonly ["Pa s"];
    };
    readonly volumeFlow: {
        readonly dim: number;
        readonly units: {
            readonly 'm^3/s': 1;
            readonly 'L/min': number;
            readonly 'm^3/h': number;
        };
        readonly show: readonly ["L/min"];
    };
    readonly voltage: {
        readonly dim: number;
        readonly units: {
            readonly V: 1;
            readonly mV: 0.001;
            readonly kV: 1000;
        };
        readonly show: readonly ["mV", "V"];
    };
    readonly current: {
        readonly dim: number;
        readonly units: {
            readonly A: 1;
            readonly mA: 0.001;
            readonly kA: 1000;
        };
        readonly show: readonly ["mA", "A"];
    };
    readonly peakPhaseCurrent: {
        readonly dim: number;
        readonly units: {
            readonly A: 1;
            readonly mA: 0.001;
            readonly kA: 1000;
        };
        readonly show: readonly ["mA", "A"];
    };
    readonly rmsPhaseCurrent: {
        readonly dim: number;
        readonly units: {
            readonly A: 1;
            readonly mA: 0.001;
            readonly kA: 1000;
        };
        readonly show: readonly ["mA", "A"];
    };
    readonly powerInvariantCurrent: {
        readonly dim: number;
        readonly units: {
            readonly A: 1;
            readonly mA: 0.001;
            readonly kA: 1000;
        };
        readonly show: readonly ["mA", "A"];
    };
    readonly charge: {
        readonly dim: number;
        readonly units: {
            readonly C: 1;
            readonly nC: 1e-9;
            readonly 'A h': 3600;
            readonly 'mA h': 3.6;
        };
        readonly show: readonly ["C"];
    };
    readonly electricalResistance: {
        readonly dim: number;
        readonly units: {
            readonly ohm: 1;
            readonly mohm: 0.001;
            readonly kohm: 1000;
        };
        readonly show: readonly ["mohm", "ohm", "kohm"];
    };
    readonly resistancePerLength: {
        readonly dim: number;
        readonly units: {
            readonly 'ohm/m': 1;
            readonly 'mohm/m': 0.001;
            readonly 'ohm/km': 0.001;
        };
        readonly show: readonly ["mohm/m"];
    };
    readonly electricalResistivity: {
        readonly dim: number;
        readonly units: {
            readonly 'ohm m': 1;
            readonly 'ohm mm^2/m': 0.000001;
        };
        readonly show: readonly ["ohm mm^2/m"];
    };
    readonly inductance: {
        readonly dim: number;
        readonly units: {
            readonly H: 1;
            readonly mH: 0.001;
            readonly uH: 0.000001;
        };
        readonly show: readonly ["uH", "mH"];
    };
    readonly fluxLinkage: {
        readonly dim: number;
        readonly units: {
            readonly Wb: 1;
            readonly mWb: 0.001;
        };
        readonly show: readonly ["mWb"];
    };
    readonly speedConstant: {
        readonly dim: number;
        readonly units: {
            readonly 'rad/s/V': 1;
            readonly 'rpm/V': number;
        };
        readonly show: readonly ["rpm/V"];
    };
    readonly backEmfConstant: {
        readonly dim: number;
        readonly units: {
            readonly 'V s/rad': 1;
            readonly 'mV s/rad': 0.001;
            readonly 'V/krpm': number;
        };
        readonly show: readonly ["V s/rad"];
    };
    readonly torqueConstantPeakPhase: {
        readonly dim: number;
        readonly units: {
            readonly 'N m/A': 1;
            readonly 'mN m/A': 0.001;
            readonly 'N cm/A': 0.01;
            readonly 'ozf in/A': number;
        };
        readonly show: readonly ["N m/A"];
    };
    readonly torqueConstantRmsPhase: {
        readonly dim: number;
        readonly units: {
            readonly 'N m/A': 1;
            readonly 'mN m/A': 0.001;
            readonly 'N cm/A': 0.01;
            readonly 'ozf in/A': number;
        };
        readonly show: readonly ["N m/A"];
    };
    readonly torqueConstantPowerInvariant: {
        readonly dim: number;
        readonly units: {
            readonly 'N m/A': 1;
            readonly 'mN m/A': 0.001;
            readonly 'N cm/A': 0.01;
            readonly 'ozf in/A': number;
        };
        readonly show: readonly ["N m/A"];
    };
    readonly torqueConstantDc: {
        readonly dim: number;
        readonly units: {
            readonly 'N m/A': 1;
            readonly 'mN m/A': 0.001;
            readonly 'N cm/A': 0.01;
            readonly 'ozf in/A': number;
        };
        readonly show: readonly ["N m/A"];
    };
    readonly motorConstant: {
        readonly dim: number;
        readonly units: {
            readonly 'N m/W^0.5': 1;
            readonly 'mN m/W^0.5': 0.001;
        };
        readonly show: readonly ["N m/W^0.5"];
    };
    readonly countsPerAngle: {
        readonly dim: number;
        readonly units: {
            readonly 'count/rad': 1;
            readonly 'count/turn': number;
            readonly 'count/deg': number;
        };
        readonly show: readonly ["count/deg"];
    };
};
export type Kind = keyof typeof KINDS;
export type UnitOf<K extends Kind> = keyof (typeof KINDS)[K]['units'] & string;
export interface KindRow {
    readonly dim: number;
    readonly units: Readonly<Record<string, number | readonly [number, number]>>;
    readonly show: readonly string[];
}
export declare const TABLE: Readonly<Record<string, KindRow>>;
export declare const siUnit: (kind: Kind) => string;
