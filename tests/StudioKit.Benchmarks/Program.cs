using System.Globalization;
using BenchmarkDotNet.Running;
using StudioKit.Benchmarks;

if (args is ["light-error"])
{
    LightError.Print(Console.Out);
    return;
}

if (args is ["light-search"])
{
    LightSearch.Print(Console.Out);
    return;
}

if (args is ["light-reuse"])
{
    LightReuse.Print(Console.Out);
    return;
}

if (args is ["plan-session"])
{
    PlanSessionRatios.Print(Console.Out);
    return;
}

if (args is ["cost-growth"])
{
    CostGrowth.Print(Console.Out);
    return;
}

if (args is ["invented-log", var records, var path])
{
    InventedLog.Write(int.Parse(records, CultureInfo.InvariantCulture), path);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
