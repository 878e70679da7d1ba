/** The version of this library; a test compares it with the package. */
export const LIBRARY_VERSION = '0.1.0'
