import type { Metadata, Viewport } from 'next'
import type { ReactNode } from 'react'
import './globals.css'

export const metadata: Metadata = {
  title: { default: 'Mearing', template: '%s · Mearing' },
  description: 'A notebook that two households keep about one boundary fence.',
  // A notebook is private to two households and whoever they show it to.
  robots: { index: false, follow: false },
  // The address of a private link goes to no other site; next.config.js says why it is not no-referrer.
  referrer: 'same-origin',
  formatDetection: { telephone: false, email: false, address: false },
}

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  colorScheme: 'light dark',
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f5f0e6' },
    { media: '(prefers-color-scheme: dark)', color: '#1c1916' },
  ],
}

export default function Layout({ children }: { children: ReactNode }) {
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  )
}
