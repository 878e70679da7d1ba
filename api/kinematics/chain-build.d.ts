import { type Given } from '../formula/index.js';
declare const SCREWS: {
    readonly gravity: {
        readonly fields: {
            x: "acceleration";
            y: "acceleration";
            z: "acceleration";
        };
        readonly optional: true;
    };
    readonly rotorInertia: {
        readonly list: {
            readonly kind: "momentOfInertia";
            readonly min: 0;
        };
        readonly least: 0;
        readonly optional: true;
    };
    readonly actuators: {
        readonly list: {
            readonly list: "ratio";
        };
        readonly optional: true;
    };
    readonly screws: {
        readonly list: {
            readonly fields: {
                readonly type: {
                    readonly oneOf: readonly ["turning", "sliding"];
                    readonly default: "turning";
                };
                readonly axis: {
                    readonly fields: {
                        x: "ratio";
                        y: "ratio";
                        z: "ratio";
                    };
                };
                readonly point: {
                    readonly fields: {
                        x: "length";
                        y: "length";
                        z: "length";
                    };
                    readonly optional: true;
                };
                readonly pitch: {
                    readonly kind: "length";
                    readonly default: "0 m";
                };
            };
        };
        readonly least: 0;
    };
    readonly tool: {
        readonly fields: {
            readonly position: {
                readonly fields: {
                    x: "length";
                    y: "length";
                    z: "length";
                };
            };
            readonly rotation: {
                readonly list: {
                    readonly list: "ratio";
                    readonly least: 3;
                };
                readonly least: 3;
                readonly optional: true;
            };
        };
    };
    readonly links: {
        readonly list: {
            readonly fields: {
                readonly mass: {
                    readonly kind: "mass";
                    readonly min: 0;
                };
                readonly centreOfMass: {
                    readonly fields: {
                        x: "length";
                        y: "length";
                        z: "length";
                    };
                };
                readonly inertia: {
                    readonly fields: {
                        readonly xx: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly yy: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly zz: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly xy: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly xz: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly yz: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                    };
                    readonly optional: true;
                };
            };
        };
        readonly least: 0;
        readonly optional: true;
    };
};
export interface ScrewChain extends Given<typeof SCREWS> {
}
declare const TABLE: {
    readonly gravity: {
        readonly fields: {
            x: "acceleration";
            y: "acceleration";
            z: "acceleration";
        };
        readonly optional: true;
    };
    readonly rotorInertia: {
        readonly list: {
            readonly kind: "momentOfInertia";
            readonly min: 0;
        };
        readonly least: 0;
        readonly optional: true;
    };
    readonly actuators: {
        readonly list: {
            readonly list: "ratio";
        };
        readonly optional: true;
    };
    readonly convention: {
        readonly oneOf: readonly ["standard", "modified"];
    };
    readonly rows: {
        readonly list: {
            readonly fields: {
                readonly type: {
                    readonly oneOf: readonly ["turning", "sliding"];
                    readonly default: "turning";
                };
                readonly theta: {
                    readonly kind: "angle";
                    readonly default: "0 rad";
                };
                readonly d: {
                    readonly kind: "length";
                    readonly default: "0 m";
                };
                readonly a: {
                    readonly kind: "length";
                    readonly default: "0 m";
                };
                readonly alpha: {
                    readonly kind: "angle";
                    readonly default: "0 rad";
                };
            };
        };
        readonly least: 0;
    };
    readonly base: {
        readonly fields: {
            readonly position: {
                readonly fields: {
                    x: "length";
                    y: "length";
                    z: "length";
                };
            };
            readonly rotation: {
                readonly list: {
                    readonly list: "ratio";
                    readonly least: 3;
                };
                readonly least: 3;
                readonly optional: true;
            };
        };
        readonly optional: true;
    };
    readonly tool: {
        readonly fields: {
            readonly position: {
                readonly fields: {
                    x: "length";
                    y: "length";
                    z: "length";
                };
            };
            readonly rotation: {
                readonly list: {
                    readonly list: "ratio";
                    readonly least: 3;
                };
                readonly least: 3;
                readonly optional: true;
            };
        };
        readonly optional: true;
    };
    readonly links: {
        readonly list: {
            readonly fields: {
                readonly mass: {
                    readonly kind: "mass";
                    readonly min: 0;
                };
                readonly centreOfMass: {
                    readonly fields: {
                        x: "length";
                        y: "length";
                        z: "length";
                    };
                };
                readonly inertia: {
                    readonly fields: {
                        readonly xx: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly yy: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly zz: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly xy: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly xz: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                        readonly yz: {
                            readonly kind: "momentOfInertia";
                            readonly default: "0 kg m^2";
                        };
                    };
                    readonly optional: true;
                };
            };
        };
        readonly least: 0;
        readonly optional: true;
    };
};
export interface DenavitHartenbergChain extends Given<typeof TABLE> {
}
export {};
