using Microsoft.AspNetCore.Components;

namespace Fretloom.Studio.Client.Words;

/// <summary>A part of the page that has words: it is drawn again when another language is chosen.</summary>
public abstract class Spoken : ComponentBase, IDisposable
{
    /// <summary>The words.</summary>
    [Inject]
    protected Labels Labels { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized() => Labels.Changed += Again;

    /// <inheritdoc/>
    public void Dispose()
    {
        Labels.Changed -= Again;
        Leave();
        GC.SuppressFinalize(this);
    }

    /// <summary>Called when the part is taken off the page.</summary>
    protected virtual void Leave() { }

    private void Again() => _ = InvokeAsync(StateHasChanged);
}
