// Loaded ahead of a program that another one owns (`node --import`): it ends the program, and all that the program started,
// as soon as the owner is gone, even where the owner had no chance to say so (kill -9, a closed terminal).

// The program's own workers load this file too; they have another parent, and their line to it must be left as it is.
if (process.channel && process.connected && String(process.ppid) === process.env.MEARING_OWNER) {
  process.once('disconnect', () => {
    signalOwnGroup('SIGTERM')
    // Whatever does not heed the request within the time that the owner itself would have given.
    setTimeout(() => {
      signalOwnGroup('SIGKILL')
      process.exit(1)
    }, 5_000).unref()
  })
  // The listener alone would keep a program that has finished its work from ending.
  process.channel.unref()
}

/** @param {NodeJS.Signals} signal */
function signalOwnGroup(signal) {
  try {
    process.kill(-process.pid, signal)
  } catch {
    // Not the head of a group: only this process is ours to end.
    process.kill(process.pid, signal)
  }
}
