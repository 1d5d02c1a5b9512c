import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { PackLink } from '../../ui/work/PackLink.tsx'

/** On the page of the record: the files, and all of it to take along. */
export function RecordFiles({ notebookId }: { notebookId: string }) {
  const home = `/notebook/${notebookId}`
  return (
    <Panel heading="Photos, papers and the record pack">
      <p>
        The record pack is one zip file for whoever has the house after you: the signed summaries, the
        notebook file, the photos and papers, the history, and a text that explains each. It holds costs,
        hours and names.
      </p>
      <div className="button-row">
        <ButtonLink href={`${home}/files`}>Photos and papers</ButtonLink>
        <ButtonLink href={`${home}/history.json`} download>
          History (JSON)
        </ButtonLink>
        <PackLink href={`${home}/record-pack.zip`}>Record pack (zip)</PackLink>
      </div>
    </Panel>
  )
}
