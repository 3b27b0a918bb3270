// What several tables use.

/** The stages that a photo or a task can belong to. */
export const STAGES = ["staging", "test_push", "sleeve_change", "wet_out", "placement", "inflation", "hold", "deflation", "verification"];

/** From what moment a time counts. */
export const COUNTS = ["joined", "target_pressure"];
