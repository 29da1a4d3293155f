using System.Text.Json;
using Fretloom.Neck;
using Fretloom.Scores.Sound;
using Fretloom.Theory;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Fretloom.Studio.Client.State;

/// <summary>What the browser does for the studio: the address, what is remembered, files, the clipboard, sound.</summary>
public sealed class Page(IJSRuntime browser)
{
    private IJSInProcessRuntime Now => (IJSInProcessRuntime)browser;

    /// <summary>A part of the address after the question mark; null when it is not there.</summary>
    public string? Asked(string name) => Now.Invoke<string?>("studio.asked", name);

    /// <summary>Takes a part of the address away that is no longer so.</summary>
    public void Forget(string name) => Now.InvokeVoid("studio.forget", name);

    /// <summary>Writes a link into the address.</summary>
    /// <param name="link">The link.</param>
    /// <param name="said">What was said, without what is taken for granted: kept beside the address, in this tab alone.</param>
    /// <param name="above">What the lesson that supplies it says of itself; empty for none. Kept there too.</param>
    /// <param name="isStep">Whether the browser's Back is to come back to the address before; else this one takes its place.</param>
    public void Address(Link link, string said, string above, bool isStep) =>
        Now.InvokeVoid("studio.address", link.Sentence, Names(link.Names), said, above, isStep);

    /// <summary>The link in the address; null when there is none.</summary>
    public Link? Asked() => Link.Of(Asked("show"), Asked("names"));

    /// <summary>What was said when the address was written in this tab; null when it was not.</summary>
    public string? Said => Now.Invoke<string?>("studio.said");

    private static string? Names(NoteNaming names) => names == NoteNaming.English ? null : names.ToString();

    /// <summary>A setting of this browser; null when it was never made.</summary>
    public string? Remembered(string name) => Now.Invoke<string?>("studio.remembered", name);

    /// <summary>Remembers a setting in this browser.</summary>
    public void Remember(string name, string value) => Now.InvokeVoid("studio.remember", name, value);

    /// <summary>Sets the theme of the page: <c>auto</c>, <c>light</c>, <c>dark</c> or <c>print</c>.</summary>
    public void Theme(string theme) => Now.InvokeVoid("studio.theme", theme);

    /// <summary>Tells the page which language its words are in.</summary>
    public void Speaks(string language) => Now.InvokeVoid("studio.speaks", language);

    /// <summary>Moves on to the sentence.</summary>
    public void ToSentence() => Focus("#sentence");

    /// <summary>Moves on to the neck, to the spot that was stood on last.</summary>
    public void ToNeck() => Focus("#neck-grid [tabindex='0']");

    /// <summary>Moves on to the first element that a CSS selector finds, once what was drawn is there.</summary>
    public void Focus(string selector) => Now.InvokeVoid("studio.focus", selector);

    /// <summary>Brings an element into view, by its id, once what was drawn is there.</summary>
    public void Reveal(string id) => Now.InvokeVoid("studio.reveal", id);

    /// <summary>Goes to another page of the host.</summary>
    public void Go(string path) => Now.InvokeVoid("location.assign", path);

    /// <summary>Moves back on to an element once what was drawn is seen, unless something else was moved on to meanwhile.</summary>
    public ValueTask GiveBackFocusAsync(ElementReference element) =>
        browser.InvokeVoidAsync("studio.giveBackFocus", element);

    /// <summary>Waits until what has been drawn so far is painted; it is not on the screen yet.</summary>
    public ValueTask Painted() => browser.InvokeVoidAsync("studio.painted", 0);

    /// <summary>Waits until what has been drawn so far is seen.</summary>
    public ValueTask Seen() => browser.InvokeVoidAsync("studio.seen");

    /// <summary>Waits until the browser has nothing else to do.</summary>
    public ValueTask Idle() => browser.InvokeVoidAsync("studio.idle");

    /// <summary>Tells whoever waits for it that the studio is ready, and waits until it is seen; a neck that the host drew goes where the studio's will be.</summary>
    public ValueTask Ready() => browser.InvokeVoidAsync("studio.ready");

    /// <summary>Sounds notes on an instrument.</summary>
    /// <param name="instrument">Whose strings are heard.</param>
    /// <param name="midis">The notes, each a MIDI number, in the order they begin.</param>
    /// <param name="gapSeconds">How much later each one begins than the one before.</param>
    public ValueTask Sound(Instrument instrument, IReadOnlyList<int> midis, double gapSeconds) =>
        browser.InvokeVoidAsync(
            "studio.sound",
            JsonSerializer.Serialize(SoundFigures.For(instrument), SoundJson.Default.SoundFigures),
            midis,
            gapSeconds
        );

    /// <summary>Lets the neck be pointed at: tells a listener which spot is <c>Pointed</c> at, <c>Chose</c>n or to be <c>Heard</c>, that the <c>Twin</c> is wanted, and when it is <c>Resized</c>.</summary>
    public ValueTask Neck<T>(DotNetObjectReference<T> listener)
        where T : class => browser.InvokeVoidAsync("studio.neck", listener);

    /// <summary>Hands a file to the browser, which saves it.</summary>
    public ValueTask Save(string name, byte[] bytes) => browser.InvokeVoidAsync("studio.save", name, bytes);

    /// <summary>Hands a picture to the browser as SVG that carries its fonts.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="svg">The picture.</param>
    public ValueTask SaveSvg(string name, string svg) => browser.InvokeVoidAsync("studio.saveSvg", name, svg);

    /// <summary>Hands a picture to the browser as PNG with a transparent ground.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="svg">The picture.</param>
    public ValueTask SavePng(string name, string svg) => browser.InvokeVoidAsync("studio.savePng", name, svg);

    /// <summary>Puts a picture on the clipboard as PNG.</summary>
    /// <returns>Whether the browser allowed it.</returns>
    public ValueTask<bool> CopyPng(string svg) => browser.InvokeAsync<bool>("studio.copyPng", svg);

    /// <summary>Saves the engraved systems that a frame shows as one PNG with a transparent ground; false where there are none.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="frame">Finds the frame, a CSS selector.</param>
    public ValueTask<bool> SaveStaves(string name, string frame) =>
        browser.InvokeAsync<bool>("studio.saveStaves", name, frame);

    /// <summary>
    /// Shows a dialog to a class, over everything and in full screen where the browser allows. The listener hears of every key that is <c>Pressed</c>,
    /// wherever it is pressed, when the room for pictures is <c>Resized</c>, and when the screen is <c>Filled</c> or no more.
    /// </summary>
    public ValueTask ShowClass<T>(string id, DotNetObjectReference<T> listener)
        where T : class => browser.InvokeVoidAsync("studio.showClass", id, listener);

    /// <summary>Ends what is shown to a class.</summary>
    public ValueTask EndClass(string id) => browser.InvokeVoidAsync("studio.endClass", id);

    /// <summary>Takes the whole screen for what is shown to a class, or gives it back.</summary>
    public void ToggleFullScreen() => Now.InvokeVoid("studio.toggleFullScreen");

    /// <summary>Tells a listener when a key of the whole page is <c>Pressed</c>, and when the browser went <c>Elsewhere</c> in the history of this tab.</summary>
    public ValueTask Listen<T>(DotNetObjectReference<T> listener)
        where T : class => browser.InvokeVoidAsync("studio.listen", listener);
}
