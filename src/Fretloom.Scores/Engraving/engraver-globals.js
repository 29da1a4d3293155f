// The engraver draws a seed for its names, which are then seeded by its options: the same every time will do.
globalThis.crypto = { getRandomValues: (bytes) => bytes.fill(1) };

// The engraver starts itself when its machine code is there. Here that is at once, so that nobody has to wait for a thread in the background.
WebAssembly.instantiate = async (bytes, imports) => {
  const module = new WebAssembly.Module(bytes);
  return { module, instance: new WebAssembly.Instance(module, imports) };
};
