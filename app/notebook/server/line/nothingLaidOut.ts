import type { Opened } from '../opened.ts'

/** Whether there is no section and no gate yet. */
export function nothingLaidOut({ notebook }: Pick<Opened, 'notebook'>): boolean {
  return notebook.sections.length + notebook.gates.length === 0
}
