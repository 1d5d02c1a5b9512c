import { ButtonLink } from '../../ui/ButtonLink.tsx'

/** Leads to the links for readers, from the pages about the record and the links of the households. */
export function ReadersLink({ notebookId }: { notebookId: string }) {
  return <ButtonLink href={`/notebook/${notebookId}/readers`}>Links for readers</ButtonLink>
}
