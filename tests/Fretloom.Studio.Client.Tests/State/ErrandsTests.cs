using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.Tests.State;

public class ErrandsTests
{
    [Fact]
    public async Task What_goes_wrong_later_is_told()
    {
        var errands = new Errands();
        var told = new TaskCompletionSource<Exception>();
        errands.Failed += told.SetResult;
        errands.Run(async () =>
        {
            await Task.Yield();
            throw new InvalidOperationException("Something.");
        });

        var problem = await told.Task.WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken);
        Assert.Equal("Something.", problem.Message);
    }

    [Fact]
    public void What_goes_wrong_at_once_is_told_and_goes_no_further()
    {
        var errands = new Errands();
        var told = new List<string>();
        errands.Failed += problem => told.Add(problem.Message);
        errands.Run(() => throw new InvalidOperationException("Something."));

        Assert.Equal(["Something."], told);
    }
}
