using StudioKit.Planning.Cutting;
using StudioKit.Planning.Tests.Cutting;

namespace StudioKit.Cutting.Tests;

public sealed class OptimalBarCutPlannerTests
{
    private static readonly OptimalBarCutPlanner Planner = new();

    public static TheoryData<string, int> Published => new()
    {
        { nameof(PublishedBarJobs.PaperRolls), 73 },
        { nameof(PublishedBarJobs.Chvatal1983), 453 },
        { nameof(PublishedBarJobs.FourerGayKernighan), 47 },
        { nameof(PublishedBarJobs.Boards), 19 },
        { nameof(PublishedBarJobs.NoRoundUp), 3 },
        { nameof(PublishedBarJobs.FalkenauerT60), 20 },
        { nameof(PublishedBarJobs.SchollN1C1W1A), 25 },
        { nameof(PublishedBarJobs.SchollN1C2W2B), 27 },
        { nameof(PublishedBarJobs.TinyU010), 5 },
        { nameof(PublishedBarJobs.TinyU020), 7 },
    };

    /// <summary>Optima as published by the source that each job names.</summary>
    [Theory]
    [MemberData(nameof(Published))]
    public void A_published_job_is_solved_to_its_published_optimum(string name, int optimum)
    {
        var job = (BarCutRequest)typeof(PublishedBarJobs).GetProperty(name)!.GetValue(null)!;
        var plan = Planner.Plan(job);

        plan.TotalBars.Should().Be(optimum);
        plan.Proof.LowerBound.Should().Be(optimum);
        plan.Proof.ProvenOptimal.Should().BeTrue();
        CutPlanChecks.Holds(job, plan).Should().BeTrue();
    }
}
