/** Leads past the head to the main part; shown once it has the focus. */
export function SkipLink() {
  return (
    <a className="skip-link" href="#main">
      Go to the page itself
    </a>
  )
}
