// What both runtimes are started with. Code is turned into the browser's own only where it runs very often: most runs a few times until the first plan, and
// turning all that is run somewhat often costs more than it saves.
export const runtimeOptions = ['--jiterpreter-minimum-trace-hit-count=30000'];
