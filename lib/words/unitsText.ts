import type { Units } from '../core/agreement/notebook.ts'

/** What the switch of units says: the label that leads to them, and what is said once they are shown. */
export const unitsSwitchWords: Readonly<Record<Units, { readonly label: string; readonly shown: string }>> = {
  'ft-in': { label: 'Show lengths in feet and inches', shown: 'Lengths are shown in feet and inches.' },
  metric: { label: 'Show lengths in metres', shown: 'Lengths are shown in metres.' },
}

/** Where the shown units are not those of the notebook. */
export const unitsOfPapers: Readonly<Record<Units, string>> = {
  'ft-in': 'Only here: the papers keep to feet and inches, and what was typed stays as typed.',
  metric: 'Only here: the papers keep to metres, and what was typed stays as typed.',
}
