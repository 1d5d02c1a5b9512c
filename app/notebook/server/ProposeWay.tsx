import { ButtonLink } from '../../ui/ButtonLink.tsx'

/** Takes a way to share into a new proposal. `what`: the way as it is called, for whoever hears the page. */
export function ProposeWay({ href, what }: { href: string; what: string }) {
  return (
    <ButtonLink href={href}>
      <span className="unbroken">Propose this</span>
      <span className="only-read-out">: {what}</span>
    </ButtonLink>
  )
}
