using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;
using Fretloom.Scores.Engraving;

namespace Fretloom.Studio.Work;

/// <summary>The typesetter and the engraver, started when they are first needed and kept warm until the studio closes.</summary>
internal sealed class Workshop : IAsyncDisposable
{
    private readonly SemaphoreSlim _places = new(Environment.ProcessorCount);

    /// <summary>Makes the files of lessons.</summary>
    public HandoutBuilder Builder { get; } = new();

    /// <summary>Sets pages.</summary>
    public TypstCompiler Typst { get; } = new();

    /// <summary>Engraves exercises.</summary>
    public Engraver Engraver { get; } = new(EngravingCache.OfUser());

    /// <summary>Does a piece of work, not many at a time.</summary>
    /// <param name="work">The work.</param>
    /// <param name="stop">Gives it up while it waits.</param>
    public async Task<T> DoAsync<T>(Func<T> work, CancellationToken stop)
    {
        await _places.WaitAsync(stop);
        try
        {
            return await Task.Run(work, CancellationToken.None);
        }
        finally
        {
            _places.Release();
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        Builder.Dispose();
        Typst.Dispose();
        Engraver.Dispose();
        return ValueTask.CompletedTask;
    }
}
