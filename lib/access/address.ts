import { networkInterfaces } from 'node:os'

/** What the address depends on. */
export type Surroundings = {
  /** MEARING_URL: how the one who runs the install says it is reached. */
  readonly setting: string | undefined
  /** PORT; 3000 where it is not set, as for `next start`. */
  readonly port: string | undefined
  /** The machine's network interfaces, as `os.networkInterfaces()` lists them. */
  readonly interfaces: ReturnType<typeof networkInterfaces>
}

/** The address at which another device, a phone at the same table, reaches this install; without a slash at its end. */
export function installAddress(): string {
  return addressFrom({
    setting: process.env.MEARING_URL,
    port: process.env.PORT,
    interfaces: networkInterfaces(),
  })
}

/** The address that the surroundings lead to: as it was set, else by the machine's first IPv4 address in its network. */
export function addressFrom({ setting, port, interfaces }: Surroundings): string {
  const set = setting?.trim().replace(/\/+$/, '')
  if (set !== undefined && set !== '') {
    return set
  }
  const reachable = Object.values(interfaces)
    .flatMap((addresses) => addresses ?? [])
    .find((address) => address.family === 'IPv4' && !address.internal)
  return `http://${reachable?.address ?? 'localhost'}:${port?.trim() || '3000'}`
}

/** The whole address of a link or an invitation. */
export function openingAddress(token: string): string {
  return `${installAddress()}/open/${token}`
}
