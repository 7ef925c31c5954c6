using MathNet.Numerics.LinearAlgebra;
using StudioKit.Field.Calibration;
using StudioKit.Field.Calibration.Drift;
using StudioKit.Kits;

namespace StudioKit.Field.Tests.Calibration;

/// <summary>What a reading would tell of a card's white margin, before it is taken.</summary>
public sealed class NextReadingsTests
{
    private const int Worlds = 20_000;

    private static readonly CalibrationPrior Prior = new();
    private static readonly LitCards Cards = new("sedge", "");
    private static readonly DateOnly Day = new(2026, 5, 9);
    private static readonly KitSpec Kit = PlannedKit.Read().Kit!;

    /// <summary>
    /// By hand from the usual priors 0.5, 0.3 and 0.5: the margin's variance 0.59; a frame of ±0.15 leaves 0.59·0.0225/0.6125, a meter before the flash
    /// 0.59 − 0.25²/0.2644, one on the sheet 0.59 − 0.34²/0.3544 (Gelman et al., normal model, one observation more).
    /// </summary>
    [Theory]
    [InlineData(CalibrationReadingKind.WhiteMargin, 0.59 * 0.0225 / 0.6125)]
    [InlineData(CalibrationReadingKind.FlashMeter, 0.59 - (0.25 * 0.25 / 0.2644))]
    [InlineData(CalibrationReadingKind.PanelMeter, 0.59 - (0.34 * 0.34 / 0.3544))]
    public void What_a_reading_would_tell_agrees_with_the_normal_model(CalibrationReadingKind kind, double left)
    {
        var candidate = Candidate(kind, []);

        candidate.Before.Should().BeApproximately(Math.Sqrt(0.59), 1e-9);
        candidate.After.Should().BeApproximately(Math.Sqrt(left), 1e-9);
        candidate.Bits.Should().BeApproximately(Math.Log2(0.59 / left) / 2, 1e-9);
    }

    /// <summary>
    /// By hand: of a frame's 0.15² two thirds, 0.0144, are the camera's and come again, 0.0081 are its own. n frames leave 0.59·(0.0144 + 0.0081/n)/(0.6044 + 0.0081/n): endless ones
    /// 0.1186, five 0.1242, four 0.1256. A meter before the flash says nothing of sheet and camera, whose 0.34 stays.
    /// </summary>
    [Theory]
    [InlineData(CalibrationReadingKind.WhiteMargin, 1.0 / 6, 1)]
    [InlineData(CalibrationReadingKind.WhiteMargin, 0.125, 5)]
    [InlineData(CalibrationReadingKind.WhiteMargin, 0.118, null)]
    [InlineData(CalibrationReadingKind.WhiteMargin, 0.8, 0)]
    [InlineData(CalibrationReadingKind.FlashMeter, 1.0 / 6, null)]
    public void Repeats_add_only_what_does_not_come_again(CalibrationReadingKind kind, double reach, int? times) => Candidate(kind, [], reach: reach).Repeats.Should().Be(times);

    [Fact]
    public void A_reading_that_was_taken_often_adds_little_more()
    {
        var known = Enumerable.Range(0, 4).Select(_ => Frame()).ToList();

        var next = Candidate(CalibrationReadingKind.WhiteMargin, known);

        next.Before.Should().BeApproximately(Left(4), 1e-9, "four frames were taken");
        next.After.Should().BeApproximately(Left(5), 1e-9, "and then there are five");
        next.Least.Should().BeApproximately(Math.Sqrt(0.59 * 0.0144 / 0.6044), 1e-9);
        next.Taken.Should().Be(4);

        static double Left(int frames) => Math.Sqrt(0.59 * (0.0144 + (0.0081 / frames)) / (0.6044 + (0.0081 / frames)));
    }

    /// <summary>By hand, with a dome that takes what it takes to a third of a stop: 0.25 + 1/9 + 0.09 + 0.25, of which a meter behind the dome reads 0.25 + 1/9.</summary>
    [Fact]
    public void What_a_dome_takes_is_part_of_the_margin_and_is_metered_through_it()
    {
        var (kit, dome) = (Domed(), new LitCards("sedge", "dome"));

        var metered = NextReadings.Of(kit, dome, Prior, [], OutingDifference.None, 0.1).Single(candidate => candidate is { Kind: CalibrationReadingKind.FlashMeter, Flash: "sedge" });

        LitCards.Of(kit).Should().Equal(dome);
        (metered.Modifier, metered.SetUp).Should().Be(("dome", "white"));
        metered.Before.Should().BeApproximately(Math.Sqrt(0.59 + (1.0 / 9)), 1e-9);
        metered.After.Should().BeApproximately(Math.Sqrt(0.59 + (1.0 / 9) - (Math.Pow(0.25 + (1.0 / 9), 2) / (0.25 + (1.0 / 9) + 0.0144))), 1e-9);

        // Once the bare flash is known, what the dome takes is most of what the same reading still tells.
        var bare = new UsedReading(Day, new("bare", CalibrationReadingKind.FlashMeter, "sedge", 0, 0, 0.12), 1);
        var then = NextReadings.Of(kit, dome, Prior, [bare], OutingDifference.None, 0.1).Single(candidate => candidate is { Kind: CalibrationReadingKind.FlashMeter, Flash: "sedge" });
        then.Taken.Should().Be(0);
        ((then.Before * then.Before) - (then.After * then.After)).Should().BeInRange(0.9 / 9, 1.1 / 9);
    }

    /// <summary>By hand, with outings that differ by 0.2: each frame shows its own outing, and the next outing is another one.</summary>
    [Fact]
    public void What_outings_differ_by_stays_until_the_next_one_is_read()
    {
        var next = Candidate(CalibrationReadingKind.WhiteMargin, [Frame()], new OutingDifference(0.2, false));

        next.Before.Should().BeApproximately(Math.Sqrt(0.63 - (0.59 * 0.59 / (0.63 + 0.0225))), 1e-9);
        next.After.Should().BeLessThan(0.15, "it is read on the day itself");
    }

    /// <summary>By hand, 0.63 with the difference of outings in it: a meter before the flash shows that only where it is the flash that differs.</summary>
    [Theory]
    [InlineData(false, 0.63 - (0.25 * 0.25 / 0.2644))]
    [InlineData(true, 0.63 - (0.29 * 0.29 / 0.3044))]
    public void A_meter_before_the_flash_shows_what_the_flash_differs_by_and_not_where_it_stands(bool isOfFlash, double left) =>
        Candidate(CalibrationReadingKind.FlashMeter, [], new OutingDifference(0.2, isOfFlash)).After.Should().BeApproximately(Math.Sqrt(left), 1e-9);

    [Fact]
    public void Every_set_up_has_its_readings_and_the_one_that_tells_most_is_first()
    {
        var all = NextReadings.Of(Kit, Cards, Prior, [Frame()], OutingDifference.None, 0.1);

        all.Should().BeInAscendingOrder(candidate => candidate.After).And.OnlyContain(candidate => candidate.After <= candidate.Before && candidate.Least <= candidate.After && candidate.SetUp == "white");
        all.Select(candidate => (candidate.Kind, candidate.Flash, candidate.IsLadder)).Should().BeEquivalentTo(
        [
            (CalibrationReadingKind.FlashMeter, "sedge", false), (CalibrationReadingKind.PanelMeter, "sedge", false), (CalibrationReadingKind.WhiteMargin, "sedge", false),
            (CalibrationReadingKind.WhiteMargin, "sedge", true), (CalibrationReadingKind.FlashMeter, "willow", false), (CalibrationReadingKind.CardInFrame, "willow", false),
        ]);
    }

    /// <summary>
    /// Brute force: thousands of worlds, in each of them the readings so far and the next one, and the margin laid through all of them by least squares. What is left of the margin then is what was said
    /// beforehand; √(1/2·20,000) is half a per cent, taken four times.
    /// </summary>
    [Theory]
    [InlineData(CalibrationReadingKind.WhiteMargin)]
    [InlineData(CalibrationReadingKind.PanelMeter)]
    [InlineData(CalibrationReadingKind.FlashMeter)]
    public void Worlds_in_which_the_reading_is_taken_leave_what_was_said(CalibrationReadingKind kind)
    {
        List<UsedReading> known = [Frame(), Frame(), new(Day, new("meter", CalibrationReadingKind.PanelMeter, "sedge", 0, 0, 0.12), 1)];
        var next = Candidate(kind, known);
        CalibrationReading[] taken = [.. known.Select(used => used.Reading), new("next", kind, "sedge", 0, 0, next.UncertaintyStops)];
        var random = new Random(20260509);
        var (rows, margins) = (new double[Worlds][], new double[Worlds]);
        for (var world = 0; world < Worlds; world++)
        {
            var (flash, sheet, clip, meter, curve) = (0.5 * Gaussian(random), 0.3 * Gaussian(random), 0.5 * Gaussian(random), Gaussian(random), Gaussian(random));
            margins[world] = flash + sheet - clip;
            rows[world] = [.. taken.Select(reading => reading.Kind switch
            {
                CalibrationReadingKind.FlashMeter => flash + Error(reading, meter),
                CalibrationReadingKind.PanelMeter => flash + sheet + Error(reading, meter),
                _ => flash + sheet - clip + Error(reading, curve),
            })];
        }

        var design = Matrix<double>.Build.DenseOfRowArrays(rows);
        var laid = Vector<double>.Build.Dense(margins);
        var left = laid - (design * design.QR().Solve(laid));
        Math.Sqrt(left.PointwisePower(2).Average()).Should().BeApproximately(next.After, next.After * 0.02);

        double Error(CalibrationReading reading, double instrument) => reading.Uncertainty * ((0.8 * instrument) + (0.6 * Gaussian(random)));
    }

    /// <summary>The same with the calibration itself: kits that are wrong by as much as they may be, each calibrated by one frame.</summary>
    [Fact]
    public void Kits_that_are_calibrated_by_the_reading_are_as_sure_as_was_said()
    {
        var (next, random) = (Candidate(CalibrationReadingKind.WhiteMargin, []), new Random(20260509));
        var errors = Enumerable.Range(0, 4000).Select(_ =>
        {
            var margin = (0.5 * Gaussian(random)) + (0.3 * Gaussian(random)) - (0.5 * Gaussian(random));
            var solved = KitCalibration.Solve([new("frame", CalibrationReadingKind.WhiteMargin, "sedge", 0, margin + (0.15 * Gaussian(random)), 0.15)], Prior);
            return solved.Value is { } result ? result.Quantities.Sum(quantity => quantity.Quantity == CalibrationQuantity.CameraClipPoint ? -quantity.CorrectionStops : quantity.CorrectionStops) - margin : (double?)null;
        }).OfType<double>().ToList();

        errors.Should().HaveCountGreaterThan(3950);
        Math.Sqrt(errors.Average(error => error * error)).Should().BeApproximately(next.After, next.After * 0.05);
    }

    private static CandidateReading Candidate(CalibrationReadingKind kind, IReadOnlyList<UsedReading> known, OutingDifference? between = null, double reach = 0.1) =>
        NextReadings.Of(Kit, Cards, Prior, known, between ?? OutingDifference.None, reach).Single(candidate => candidate.Kind == kind && candidate is { Flash: "sedge", IsLadder: false });

    private static UsedReading Frame() => new(Day, new("frame", CalibrationReadingKind.WhiteMargin, "sedge", 0, 0.1, 0.15), 1);

    private static KitSpec Domed() => Kit with
    {
        SetUps = [.. Kit.SetUps.Select(setUp => setUp with { Lights = [.. setUp.Lights.Select(light => light.Flash == "sedge" ? light with { Modifier = "dome" } : light)] })],
    };

    private static double Gaussian(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
