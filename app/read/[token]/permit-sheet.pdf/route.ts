import { sheetForReader } from '../../server/sheetForReader.ts'

export async function GET(
  _request: Request,
  { params }: { params: Promise<{ token: string }> },
): Promise<Response> {
  return sheetForReader((await params).token, 'permit')
}
