type Document = Record<string, unknown>

/** What brings a document of one version up to the next; the key is the version it starts from. */
const STEPS: Readonly<Record<number, (document: Document) => Document>> = {
  // Version 1 had one `air` temperature and no section of its own for the weather.
  1: ({ air, ...rest }) => (air === undefined ? rest : { ...rest, environment: { ...(rest.environment as object), normalAir: air } }),
  // Version 2 had a layer height, which no check used, and a duty factor of hops, which follows from height and travel.
  2: ({ print, usage, ...rest }) => ({
    ...rest,
    ...(print === undefined ? {} : { print: without(print, 'layerHeight') }),
    ...(usage === undefined ? {} : { usage: without(usage, 'hopDutyFactor') }),
  }),
}

function without(section: unknown, name: string): unknown {
  if (typeof section !== 'object' || section === null || Array.isArray(section)) return section
  const { [name]: _, ...rest } = section as Document
  return rest
}

/** Brings a document of version 1 or 2 up to version 3, one version at a time. */
export function toVersion3(document: Readonly<Document>, from: number): Document {
  let current: Document = { ...document }
  for (let version = from; version < 3; version++) current = (STEPS[version] as (d: Document) => Document)(current)
  return current
}
