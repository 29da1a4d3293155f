using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using Fretloom.Bench;

if (args is ["claims"])
{
    ClaimRatios.Print();
    return;
}

BenchmarkSwitcher
    .FromAssembly(typeof(Program).Assembly)
    .Run(args, DefaultConfig.Instance.AddColumn(StatisticColumn.Median));
