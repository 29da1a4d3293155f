namespace Fretloom.Studio.Client.State;

/// <summary>Work that is begun and not waited for. What goes wrong in it is told to whoever listens.</summary>
public sealed class Errands
{
    /// <summary>Raised when something went wrong.</summary>
    public event Action<Exception>? Failed;

    /// <summary>Begins some work.</summary>
    public void Run(Func<Task> work) => _ = RunAsync(work);

    private async Task RunAsync(Func<Task> work)
    {
        try
        {
            await work();
        }
        catch (Exception problem) when (Failed is not null)
        {
            Failed(problem);
        }
    }
}
