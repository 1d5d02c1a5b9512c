import { stationRows } from '../../../../lib/words/lookText.ts'
import { typedLength } from '../../../../lib/words/summary/typedLength.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { DefinitionList } from '../../../ui/DefinitionList.tsx'
import { fieldId } from '../../../ui/draft/fieldId.ts'
import { Look } from '../../../ui/look/LookAround.tsx'
import { StandingStatus } from '../MarkBox.tsx'
import type { Opened } from '../opened.ts'
import { standingOf } from '../standingOf.ts'
import type { SinceSigned } from '../statusOf.ts'
import { lookId } from './lookAddress.ts'

/** One station: how far off the line the fence stands there, and the ground on both sides. */
export function StationLook({
  opened,
  since,
  index,
}: {
  opened: Opened
  since: SinceSigned | undefined
  index: number
}) {
  const { notebook, notebookId } = opened
  const at = notebook.line.stations[index]?.at ?? ''
  const field = fieldId('field', `line.stations[${index}].at`)
  return (
    <Look
      id={lookId('station', index)}
      title={`Station ${at === '' ? index + 1 : typedLength(notebook, at)}`}
    >
      <DefinitionList items={stationRows(notebook, index)} />
      <p>
        All stations are marked together, with the line:{' '}
        <StandingStatus standing={standingOf(opened, 'line')} opened={opened} since={since} />
      </p>
      <div className="button-row">
        <ButtonLink href={`/notebook/${notebookId}/line#${field}`}>Open this station</ButtonLink>
      </div>
    </Look>
  )
}
