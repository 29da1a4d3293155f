using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using Fretloom.Bench;

switch (args)
{
    case ["claims"]:
        ClaimRatios.Print();
        return;
    case ["claim-times"]:
        ClaimTimes.Print();
        return;
    case ["sound"]:
        SoundTimes.Print();
        return;
    case ["scores"]:
        ScoreTimes.Print();
        return;
    case ["stops"]:
        ClaimStops.Print();
        return;
    case ["studio"]:
        await StudioTimes.PrintAsync();
        return;
}

BenchmarkSwitcher
    .FromAssembly(typeof(Program).Assembly)
    .Run(args, DefaultConfig.Instance.AddColumn(StatisticColumn.Median));
