export declare function checkHistory(where: string, d: {
    readonly contactStiffness?: number | undefined;
    readonly friction: number;
    readonly drumFriction?: number | undefined;
}): void;
export declare function checkStep(where: string, name: string, i: number, value: number): number;
