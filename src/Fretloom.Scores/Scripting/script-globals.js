// What a library expects of a browser and a bare engine lacks.
const silent = () => {};
globalThis.console = { log: silent, info: silent, warn: silent, error: silent, debug: silent };

globalThis.newBytes = (length) => new Uint8Array(length);

globalThis.queueMicrotask = (callback) => { Promise.resolve().then(callback); };

globalThis.TextEncoder = class {
  encode(text) {
    const bytes = [];
    for (const character of text) {
      let code = character.codePointAt(0);
      if (code >= 0xd800 && code <= 0xdfff) code = 0xfffd;
      if (code < 0x80) bytes.push(code);
      else if (code < 0x800) bytes.push(0xc0 | (code >> 6), 0x80 | (code & 63));
      else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
      else bytes.push(0xf0 | (code >> 18), 0x80 | ((code >> 12) & 63), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
    }
    return Uint8Array.from(bytes);
  }
};

// Libraries only hand out UTF-8 that is well formed.
globalThis.TextDecoder = class {
  decode(bytes = []) {
    let text = "";
    for (let i = 0; i < bytes.length;) {
      const lead = bytes[i++];
      const more = lead < 0x80 ? 0 : lead < 0xe0 ? 1 : lead < 0xf0 ? 2 : 3;
      let code = more === 0 ? lead : lead & (0x3f >> more);
      for (let n = 0; n < more; n++) code = (code << 6) | (bytes[i++] & 63);
      text += String.fromCodePoint(code);
    }
    return text;
  }
};
