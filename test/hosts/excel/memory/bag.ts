/**
 * An object with any properties: what is set is kept, what is read and was never set is another bag. For formats,
 * where the library itself knows which properties there are.
 */
export class Bag {
  [name: string]: unknown;

  constructor(own: Record<string, unknown> = {}) {
    Object.assign(this, own);
    return new Proxy(this, {
      has: () => true,
      get: (target, name) => {
        if (typeof name !== "string" || name in Object.prototype || name === "toJSON" || name === "Items") {
          return Reflect.get(target, name) as unknown;
        }
        if (name === "Address" || name === "Id" || name === "Name")
          return Object.getOwnPropertyDescriptor(target, name)?.value;
        if (name === "SetSolidColor") return (color: string) => void (target["Color"] = color);
        if (!Object.hasOwn(target, name)) target[name] = new Bag();
        return target[name];
      },
    });
  }
}
