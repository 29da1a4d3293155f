using Fretloom.Studio.Client.Write.Desk;
using Microsoft.JSInterop;

namespace Fretloom.Studio.Client.Write;

/// <summary>The scripts of the lesson editor, fetched when they are first needed.</summary>
public sealed class EditorModule(IJSRuntime browser) : IDrafts
{
    private Task<IJSInProcessObjectReference>? _script;

    /// <summary>The functions of <c>write/editor.js</c>.</summary>
    public Task<IJSInProcessObjectReference> Script =>
        // A script that could not be fetched is asked for again.
        _script is { IsFaulted: false }
            ? _script
            : _script = browser.InvokeAsync<IJSInProcessObjectReference>("import", "./write/editor.js").AsTask();

    /// <inheritdoc/>
    public async ValueTask<bool> KeepAsync(string name, string? etag, string text) =>
        (await Script).Invoke<bool>("keep", name, etag, text);

    /// <inheritdoc/>
    public async ValueTask SetAsideAsync(string name) => (await Script).InvokeVoid("setAside", name);

    /// <inheritdoc/>
    public async ValueTask DropAsync(string name) => (await Script).InvokeVoid("drop", name);

    /// <inheritdoc/>
    public async ValueTask DiscardAsync(string key) => await (await Script).InvokeVoidAsync("discard", key);

    /// <inheritdoc/>
    public async ValueTask<IReadOnlyList<string>> NamesAsync() => await (await Script).InvokeAsync<string[]>("names");

    /// <inheritdoc/>
    public async ValueTask<IReadOnlyList<Draft>> LeftBehindAsync(string name) =>
        WriteJson.Drafts(await (await Script).InvokeAsync<string>("leftBehind", name));
}
