import { notFound } from 'next/navigation'
import { printFonts } from '../../../lib/files/printFonts.ts'

/** The type that papers are set in, for their pages on screen. It is the same for everyone, and never changes. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ face: string }> },
): Promise<Response> {
  const { face } = await params
  if (face !== 'regular' && face !== 'semibold') notFound()
  return new Response(new Uint8Array(printFonts()[face]), {
    headers: { 'Content-Type': 'font/ttf', 'Cache-Control': 'public, max-age=31536000, immutable' },
  })
}
