import type { Gate, Notebook, Section, Share } from '../../core/agreement/notebook.ts'

/**
 * A notebook with nothing in it of what the fence costs, who works on it, what each household gets out of it, or who
 * pays. Only what is named here is carried over: a key that the format gains later stays behind until somebody says
 * that it may be read by strangers. What people typed into names, notes, terms, checks and decisions stays as it is.
 */
export function notebookWithoutCosts(notebook: Notebook): Notebook {
  const { format, version, title, currency, units, households, line, terms, checks, decisions } = notebook
  return {
    format,
    version,
    title,
    currency,
    units,
    households,
    line,
    sections: notebook.sections.map(sectionWithoutCosts),
    gates: notebook.gates.map(gateWithoutCosts),
    common: [],
    caps: {},
    contributions: [],
    terms,
    checks,
    decisions,
    ...(notebook.closing ? { closing: notebook.closing } : {}),
    dates: notebook.dates,
    buildUps: [],
    inventory: [],
    books: { bought: [], things: [], conversions: [] },
  }
}

/** Says nothing of how an item is shared; a notebook can't be without. */
const share: Share = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }

function sectionWithoutCosts(section: Section): Section {
  const { id, name, from, to, owner, upkeep, height, face, infill, drainage, notes, buildUp, measured } =
    section
  return {
    id,
    name,
    materials: [],
    labour: [],
    share,
    from,
    to,
    owner,
    upkeep,
    height,
    face,
    infill,
    drainage,
    notes,
    ...(buildUp ? { buildUp } : {}),
    measured,
    // What a household needs is between the two.
    meets: [],
  }
}

function gateWithoutCosts(gate: Gate): Gate {
  const { id, name, at, opening, stands, opens, latch, keys, owner, upkeep, notes, buildUp } = gate
  return {
    id,
    name,
    materials: [],
    labour: [],
    share,
    at,
    opening,
    stands,
    // How often a household goes through weighs in who pays.
    uses: { a: '', b: '' },
    opens,
    latch,
    keys,
    owner,
    upkeep,
    notes,
    ...(buildUp ? { buildUp } : {}),
  }
}
