import type { CautionKind } from '../core/agreement/cautions.ts'

export const beforeWork = 'Before anyone works'

/** One or two sentences each, said where the work is planned. The paper has them all. */
export const cautionSentences: Readonly<Record<CautionKind, string>> = {
  digging: 'Digging: have buried services marked first, private lines too.',
  welding:
    'Welding and cutting have safety rules of their own: eyes, fire, fumes. Zinc and old paint give off toxic fumes; a closed tube must be vented before it is heated.',
  reclaimed:
    'Reclaimed tube from oil fields or plants can hold explosive residue, radioactive scale or lead paint. Find out where it came from, and have it tested.',
  concrete: 'Wet concrete burns skin and eyes, and its dust harms lungs. Bags are heavy: lift with care.',
  pool: 'A fence that keeps children from a pool has to meet rules of its own. Ask the permit office, and leave its design to a licensed designer.',
}
