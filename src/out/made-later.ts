/** Has a property's value made when it is first asked for. A value that it is given instead stands. */
export function madeLater<Of extends object, Key extends keyof Of>(of: Of, key: Key, make: () => Of[Key]): void {
  const settle = (value: Of[Key]) => {
    Object.defineProperty(of, key, { value, writable: true, enumerable: true, configurable: true });
    return value;
  };
  Object.defineProperty(of, key, { get: () => settle(make()), set: settle, enumerable: true, configurable: true });
}

/** True where a property's value has been neither asked for nor given. */
export function isUnmade<Of extends object>(of: Of, key: keyof Of): boolean {
  return Object.getOwnPropertyDescriptor(of, key)?.get !== undefined;
}
