'use client'

/** Has the browser save what is at an address, as if its link had been pressed. */
export function saveBy(address: string, name = ''): void {
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
}
