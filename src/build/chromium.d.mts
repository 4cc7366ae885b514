/** The browser that is there, or Debian's, installed now; stops the program where none can be had. */
export function findOrInstallChromium(): string;
