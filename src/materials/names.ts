// Written by `npm run meanings` for completion in an editor; types alone.
// biome-ignore-all format: written by a script

/** The name of a material of the table. */
export type MaterialName =
  | 'PLA' | 'PLA-CF' | 'PETG' | 'PETG-CF' | 'PET-CF' | 'PET-GF' | 'ABS' | 'ABS-CF' | 'ABS-GF' | 'ASA' | 'ASA-CF' | 'ASA-GF' | 'PA6'
  | 'PA12' | 'PA-CF' | 'PA6-GF' | 'PC' | 'TPU 95A' | 'TPU 85A' | 'POM' | 'PP' | 'PEEK' | 'aluminium 6061-T6' | 'stainless 304'
  | 'stainless 316' | 'steel 8.8' | 'steel 10.9' | 'steel 12.9' | 'spring steel' | 'brass' | 'NdFeB' | 'epoxy' | 'anaerobic'
