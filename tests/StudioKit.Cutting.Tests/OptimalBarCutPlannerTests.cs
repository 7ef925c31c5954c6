using StudioKit.Planning.Cutting;
using StudioKit.Planning.Tests.Cutting;
using UnitsNet;

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

    /// <summary>Hand arithmetic: with kerf, floor((L + k) / (l + k)) pieces a bar; the mixed jobs were counted by an exact search.</summary>
    [Theory]
    [InlineData(3000, 0, 4, "1000x10")]
    [InlineData(3000, 3, 5, "1000x10")]
    [InlineData(1200, 0, 5, "500x5 400x5 300x5")]
    [InlineData(1200, 2, 6, "500x5 400x5 300x5")]
    [InlineData(3000, 0, 5, "750x8 500x6 1250x3")]
    [InlineData(3000, 3, 5, "750x8 500x6 1250x3")]
    [InlineData(2000, 0, 6, "455x6 340x8 275x10 610x4")]
    [InlineData(2000, 3, 6, "455x6 340x8 275x10 610x4")]
    public void Kerf_costs_a_bar_where_it_must(double stock, double kerf, int bars, string pieces)
    {
        var plan = Planner.Plan(PublishedBarJobs.Job(stock, Parsed(pieces), kerf));

        plan.TotalBars.Should().Be(bars);
        plan.Proof.ProvenOptimal.Should().BeTrue();
    }

    /// <summary>Every bar of the triplet job is full to the end, so that any kerf needs one more (pigeonhole on total length).</summary>
    [Fact]
    public void Bars_that_are_just_full_leave_no_room_for_a_kerf()
    {
        var plan = Planner.Plan(PublishedBarJobs.FalkenauerT60 with { Kerf = Length.FromMillimeters(1) });

        plan.TotalBars.Should().BeGreaterThan(20);
        plan.Proof.LowerBound.Should().BeGreaterThan(20);
    }

    /// <summary>The encyclopaedia's article gives ten as the least number of patterns at 73 rolls.</summary>
    [Fact]
    public void Equal_cost_plans_are_tidied_towards_few_patterns()
    {
        var job = PublishedBarJobs.FourerGayKernighan;
        var untidied = new OptimalBarCutPlanner(CutEffort.Usual with { TidyingWork = 0 }).Plan(job);
        var plan = Planner.Plan(job);

        plan.TotalBars.Should().Be(untidied.TotalBars);
        plan.DistinctPatterns.Should().BeLessThanOrEqualTo(untidied.DistinctPatterns);
        Planner.Plan(PublishedBarJobs.PaperRolls).DistinctPatterns.Should().BeGreaterThanOrEqualTo(10);
    }

    [Fact]
    public void Small_random_jobs_cost_what_trying_everything_says() =>
        SmallBars.Sample(
            job =>
            {
                var plan = Planner.Plan(job);
                var least = TriedBars.LeastCost(job);
                return CutPlanChecks.Holds(job, plan)
                    && (least is null ? !plan.Complete : plan.TotalCost == least && plan.Proof.ProvenOptimal);
            },
            iter: 60);

    [Fact]
    public void Random_jobs_are_whole_and_never_dearer_than_first_fit() =>
        CutJobs.Bars.Sample(
            job =>
            {
                var plan = Planner.Plan(job);
                var quick = new FirstFitBarCutPlanner().Plan(job);
                return CutPlanChecks.Holds(job, plan)
                    && plan.Uncut.Sum(piece => piece.Count) <= quick.Uncut.Sum(piece => piece.Count)
                    && (!quick.Complete || (plan.Complete && plan.Proof.Value <= quick.Proof.Value))
                    && (!quick.Complete || quick.Proof.LowerBound <= plan.Proof.Value);
            },
            iter: 60);

    /// <summary>
    /// Long bars hold thousands of patterns, too many to list. By counting all numbers of bars: pieces and kerfs take 19 391.6 mm, and no set of bars
    /// under 37.70 holds as much, each bar lending one kerf.
    /// </summary>
    [Fact]
    public void Forty_pieces_from_three_stock_lengths_are_proven_even_where_bars_are_long()
    {
        var job = new BarCutRequest
        {
            Pieces =
            [
                Piece("A", 571.4, 4), Piece("B", 371.4, 4), Piece("C", 471.4, 4), Piece("D", 250, 6),
                Piece("E", 304.8, 6), Piece("F", 800, 6), Piece("G", 457.2, 5), Piece("H", 640, 5),
            ],
            Stock = [Bar(2000, 4.10m), Bar(3000, 5.90m), Bar(6000, 11.20m)],
            Kerf = Length.FromMillimeters(3),
        };

        var plan = Planner.Plan(job);

        plan.Proof.ProvenOptimal.Should().BeTrue();
        plan.TotalCost.Should().Be(37.70m);
        CutPlanChecks.Holds(job, plan).Should().BeTrue();

        static BarPiece Piece(string label, double millimetres, int count) => new(label, Length.FromMillimeters(millimetres), count);

        static StockBar Bar(double millimetres, decimal price) => new($"{millimetres} mm", Length.FromMillimeters(millimetres), price);
    }

    [Fact]
    public void Forty_pieces_of_eight_lengths_from_three_stocks_are_proven_by_trying_all()
    {
        for (var seed = 0; seed < 25; seed++)
        {
            var job = FortyPieces(new Random(seed));
            var plan = Planner.Plan(job);

            plan.Proof.ProvenOptimal.Should().BeTrue();
            plan.Proof.Method.Should().Be("trying all ways that could cost less");
            CutPlanChecks.Holds(job, plan).Should().BeTrue();
        }
    }

    /// <summary>Against the branch-and-cut and constraint solvers of OR-Tools, a general-purpose library.</summary>
    [Fact]
    public void Trying_all_costs_what_the_solvers_prove() =>
        Gen.OneOf(FortyPieceJobs, CutJobs.Bars, SmallBars).Sample(
            job =>
            {
                var (direct, solved) = (Planner.Plan(job), new OptimalBarCutPlanner(CutEffort.Usual with { DirectWork = 0 }).Plan(job));
                return !direct.Proof.ProvenOptimal || !solved.Proof.ProvenOptimal || direct.TotalCost == solved.TotalCost;
            },
            iter: 15);

    /// <summary>Hand arithmetic: longest first gives a bar of 500s and a bar of the rest; one bar cut 500, 300, 200 twice does the same.</summary>
    [Fact]
    public void Two_ways_of_cutting_become_one_where_one_does()
    {
        var job = PublishedBarJobs.Job(1000, Parsed("500x2 300x2 200x2"), 0);

        new OptimalBarCutPlanner(CutEffort.Usual with { TidyingWork = 0 }).Plan(job).DistinctPatterns.Should().Be(2);
        Planner.Plan(job).DistinctPatterns.Should().Be(1);
    }

    [Fact]
    public void Tidying_makes_no_plan_dearer_and_no_more_patterns() =>
        Gen.OneOf(FortyPieceJobs, CutJobs.Bars).Sample(
            job =>
            {
                var (plan, untidied) = (Planner.Plan(job), new OptimalBarCutPlanner(CutEffort.Usual with { TidyingWork = 0 }).Plan(job));
                return CutPlanChecks.Holds(job, plan) && plan.TotalCost <= untidied.TotalCost && plan.DistinctPatterns <= untidied.DistinctPatterns;
            },
            iter: 20);

    [Fact]
    public void The_same_job_gives_the_same_plan()
    {
        var first = Planner.Plan(PublishedBarJobs.TinyU020);
        var second = Planner.Plan(PublishedBarJobs.TinyU020);

        first.Bars.SelectMany(bar => bar.Marks).Should().Equal(second.Bars.SelectMany(bar => bar.Marks));
    }

    [Fact]
    public void A_search_that_is_stopped_still_returns_a_whole_plan()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var plan = Planner.Plan(PublishedBarJobs.FalkenauerT60, cancellationToken: stop.Token);

        CutPlanChecks.Holds(PublishedBarJobs.FalkenauerT60, plan).Should().BeTrue();
        plan.Complete.Should().BeTrue();
        plan.Proof.Gap.Should().BePositive();
    }

    private static readonly Gen<BarCutRequest> FortyPieceJobs = Gen.Int[0, 1_000_000].Select(seed => FortyPieces(new Random(seed)));

    private static readonly Gen<BarCutRequest> SmallBars =
        from lengths in Gen.Int[2, 12].Array[1, 7]
        from stock in Gen.Select(Gen.Int[8, 20], Gen.Int[0, 9], Gen.Int[0, 3]).Array[1, 3]
        from kerf in Gen.Int[0, 2]
        where stock.Any(bar => bar.Item2 > 0)
        select new BarCutRequest
        {
            Pieces = [.. lengths.Select((length, i) => new BarPiece($"P{i}", Length.FromMillimeters(length)))],
            Stock =
            [
                .. stock.Select((bar, i) =>
                    new StockBar($"S{i}", Length.FromMillimeters(bar.Item1), bar.Item2, bar.Item3 == 0 ? null : bar.Item3)),
            ],
            Kerf = Length.FromMillimeters(kerf),
        };

    private static BarCutRequest FortyPieces(Random random)
    {
        var counts = Enumerable.Repeat(1, 8).ToArray();
        for (var more = 0; more < 32; more++)
        {
            counts[random.Next(counts.Length)]++;
        }

        return new BarCutRequest
        {
            Pieces = [.. counts.Select((count, i) => new BarPiece($"P{i}", Length.FromMillimeters(random.Next(1500, 14_000) / 10.0), count))],
            Stock = [.. Enumerable.Range(0, 3).Select(i => Bar(random.Next(30, 121), random.Next(90, 111), i))],
            Kerf = Length.FromMillimeters(random.Next(4)),
        };

        static StockBar Bar(int steps, int price, int i) => new($"S{i}", Length.FromMillimeters(50 * steps), Math.Round(steps * price / 1000m, 2));
    }

    private static (double Length, int Count)[] Parsed(string pieces) =>
        [.. pieces.Split(' ').Select(piece => piece.Split('x')).Select(parts => (double.Parse(parts[0], null), int.Parse(parts[1], null)))];
}
