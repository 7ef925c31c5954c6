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

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
