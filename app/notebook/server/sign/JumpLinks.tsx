import { jumpWords } from '../../../../lib/words/signingWords.ts'

export type JumpTo = { readonly id: string; readonly label: string }

/** Links to the parts further down the same page. */
export function JumpLinks({ to }: { to: readonly JumpTo[] }) {
  return (
    <nav className="jump-links" aria-label={jumpWords.label}>
      <ul>
        {to.map(({ id, label }) => (
          <li key={id}>
            <a href={`#${id}`}>
              {label}
              <span aria-hidden="true"> ↓</span>
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}
