// Where a start can be reached, in words.

/** @typedef {import('node:os').NetworkInterfaceInfo} NetworkInterfaceInfo */

/**
 * The first IPv4 address at which another device on the network reaches this one.
 *
 * @param {NodeJS.Dict<NetworkInterfaceInfo[]>} interfaces as from `os.networkInterfaces()`
 * @returns {string | undefined} undefined where there is none
 */
export function networkAddress(interfaces) {
  const reachable = Object.values(interfaces)
    .flatMap((addresses) => addresses ?? [])
    .filter((address) => address.family === 'IPv4' && !address.internal)
    .map((address) => address.address)
  // 169.254.0.0/16 is what a device gives itself when the network gave it nothing (RFC 3927): other devices rarely get there.
  return reachable.find((address) => !address.startsWith('169.254.'))
}

/**
 * @param {object} start
 * @param {number} start.port
 * @param {string | undefined} start.publicAddress MEARING_URL
 * @param {NodeJS.Dict<NetworkInterfaceInfo[]>} start.interfaces
 * @param {string} start.dataFolder absolute path
 * @returns {string[]} lines to print
 */
export function startLines({ port, publicAddress, interfaces, dataFolder }) {
  const host = networkAddress(interfaces)
  const elsewhere =
    publicAddress ??
    (host === undefined
      ? 'no network address found (connect to a network, or set MEARING_URL)'
      : `http://${host}:${port}`)
  return [
    'Mearing is running.',
    `  On this device:     http://localhost:${port}`,
    `  On another device:  ${elsewhere}`,
    `  Data folder:        ${dataFolder}`,
    'Stop it with Ctrl-C.',
  ]
}
