// Starts the program, and once it is seen what keeps it for times without a host: that fetches everything again, and would hold the first sight up.
{
  // The program would ask for these later.
  const runtime = fetch("_framework/dotnet.native.wasm");
  let assemblies = fetch("_framework/assemblies.bin").then(opened);

  // One file that begins with the length of its list, four bytes, the least first; then the list, JSON: where each assembly begins, counted from the
  // list's end, and its length in bytes.
  async function opened(answer) {
    if (!answer.ok) throw new Error(`assemblies.bin: ${answer.status}`);
    const bytes = await answer.arrayBuffer();
    const begin = 4 + new DataView(bytes).getUint32(0, true);
    const list = JSON.parse(new TextDecoder().decode(new Uint8Array(bytes, 4, begin - 4)));
    return name => new Response(new Uint8Array(bytes, begin + list[name][0], list[name][1]));
  }

  const part = (type, name) => {
    if (type === "dotnetwasm") return runtime;
    if (type === "assembly") return assemblies.then(assembly => assembly(name));
    return null;
  };
  Blazor.start({ loadBootResource: part });
  // The runtime has its own copy.
  studio.whenReady.then(() => (assemblies = null));
}
if ("serviceWorker" in navigator) {
  studio.whenReady.then(() => navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" })).catch(() => {});
}
