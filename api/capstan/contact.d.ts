export interface ArcResponse {
    readonly feed: number;
    readonly compliance: number;
    readonly slipArc: number;
}
export declare function elasticArc(T: number, T0: number, mu: number, R: number, wrap: number, EA: number, k: number): ArcResponse;
