using StudioKit.Field.Calibration;

namespace StudioKit.Field.Tests.Calibration;

public sealed class KitCalibrationTests
{
    private static readonly CalibrationPrior Prior = new();

    /// <summary>
    /// One flash, one reading of it: the textbook product of two normal densities. With prior 0 ± 0.5 and reading −0.4 ± 0.2 the weights are 4
    /// and 25, so the mean is −0.4·25/29 and its deviation 1/√29 (Gelman et al., Bayesian Data Analysis, § 2.5, normal data with known variance).
    /// </summary>
    [Fact]
    public void One_reading_of_one_flash_gives_the_weighted_mean()
    {
        var flash = Solve(new CalibrationReading("meter", CalibrationReadingKind.FlashMeter, "beneath", 10, 9.6, 0.2)).Quantities[0];

        flash.CorrectionStops.Should().BeApproximately(-0.4 * 25 / 29, 1e-12);
        flash.UncertaintyStops.Should().BeApproximately(1 / Math.Sqrt(29), 1e-12);
    }

    [Fact]
    public void What_was_not_read_stays_as_it_was()
    {
        var result = Solve(new CalibrationReading("meter", CalibrationReadingKind.FlashMeter, "beneath", 10, 9.6, 0.2));

        var clip = result.Quantities.Single(quantity => quantity.Quantity == CalibrationQuantity.CameraClipPoint);
        (clip.CorrectionStops, clip.UncertaintyStops).Should().Be((0, Prior.CameraClipPoint));
        result.Caveats.Should().Contain(caveat => caveat.Contains("clip point"));
    }

    [Fact]
    public void Precise_readings_of_every_kind_recover_the_truth()
    {
        var truth = new Truth(-0.6, 0.2, -0.25, 0.7);

        var result = KitCalibration.Solve(truth.Readings(0.001, new Random(1)), Prior).Value!;

        // A thousandth of a stop of noise on two or more readings of each kind.
        result.Quantities.Select(quantity => quantity.CorrectionStops)
            .Zip(truth.Values, (found, true_) => Math.Abs(found - true_)).Max().Should().BeLessThan(0.005);
    }

    /// <summary>
    /// Truths are drawn from the prior and readings from their stated noise; of 1,000 kits a stated 68.27 % interval must hold 683 ± 4.5·14.7
    /// truths and a 95.45 % interval 954 ± 4.5·6.6 (binomial deviations; at 4.5 a sound calibration fails once in 100,000).
    /// </summary>
    [Fact]
    public void Truth_lies_inside_the_stated_uncertainty_as_often_as_stated()
    {
        var random = new Random(20260509);
        var inside = new int[4, 2];
        for (var kit = 0; kit < 1000; kit++)
        {
            var truth = new Truth(
                Gaussian(random) * Prior.FlashLight, Gaussian(random) * Prior.FlashLight,
                Gaussian(random) * Prior.PanelTransmittance, Gaussian(random) * Prior.CameraClipPoint);
            var result = KitCalibration.Solve(truth.Readings(0.15, random), Prior).Value!;
            for (var i = 0; i < 4; i++)
            {
                var off = Math.Abs(result.Quantities[i].CorrectionStops - truth.Values[i]) / result.Quantities[i].UncertaintyStops;
                inside[i, 0] += off < 1 ? 1 : 0;
                inside[i, 1] += off < 2 ? 1 : 0;
            }
        }

        for (var i = 0; i < 4; i++)
        {
            inside[i, 0].Should().BeInRange(617, 749, $"that is 68 % for quantity {i}");
            inside[i, 1].Should().BeInRange(925, 984, $"that is 95 % for quantity {i}");
        }
    }

    [Fact]
    public void A_reading_that_disagrees_is_named_and_hardly_believed()
    {
        var truth = new Truth(-0.6, 0.2, -0.25, 0.7);
        var readings = truth.Readings(0.05, new Random(5));
        readings.Add(new("wrong zoom", CalibrationReadingKind.PanelMeter, "beneath", 0, 1.5, 0.05));

        var result = KitCalibration.Solve(readings, Prior).Value!;

        result.Residuals.Where(residual => residual.Disagrees).Select(residual => residual.Reading.Name).Should().Equal("wrong zoom");
        result.Quantities[0].CorrectionStops.Should().BeApproximately(-0.6, 0.2);
    }

    /// <summary>
    /// Prior 0.5 and reading 0.12 allow four times √(0.25 + 0.0144), 2.06 stops (Gelman et al., § 2.5: prior predictive variance τ² + σ²).
    /// </summary>
    [Theory]
    [InlineData(980, true)]
    [InlineData(-2.1, true)]
    [InlineData(1.5, false)]
    public void A_reading_that_the_kits_own_uncertainty_excludes_has_no_say_and_is_named(double off, bool isLeftOut)
    {
        var result = Solve(
            new("sound", CalibrationReadingKind.FlashMeter, "beneath", 10, 10.1, 0.12),
            new("slip", CalibrationReadingKind.FlashMeter, "above", 10, 10 + off, 0.12));

        result.Residuals.Single(residual => residual.IsImpossible == isLeftOut && residual.Reading.Name == "slip").IsUsed.Should().Be(!isLeftOut);
        if (isLeftOut)
        {
            result.Quantities.Single(quantity => quantity.Flash == "above").CorrectionStops.Should().Be(0);
            result.Residuals[1].Disagrees.Should().BeTrue();
        }
    }

    [Fact]
    public void Nothing_comes_of_readings_that_are_all_impossible() =>
        KitCalibration.Solve(
            [new("a", CalibrationReadingKind.FlashMeter, "beneath", 0, 980, 0.1), new("b", CalibrationReadingKind.PanelMeter, "beneath", 0, -50, 0.1)], Prior)
            .Diagnostics.Select(fault => fault.Subject).Should().Equal("a", "b");

    /// <summary>
    /// One reading off by d leaves d²/(σ² + τ²) when it and the prior are weighed; chi-square of one degree of freedom exceeds 3.841 with
    /// probability 0.05, 6.635 with 0.01 and 2.706 with 0.1 (NIST/SEMATECH e-Handbook, 1.3.6.7.4, from memory).
    /// </summary>
    [Theory]
    [InlineData(3.841, 0.05)]
    [InlineData(6.635, 0.01)]
    [InlineData(2.706, 0.1)]
    public void Agreement_is_judged_by_chi_square(double chiSquare, double probability)
    {
        var off = Math.Sqrt(chiSquare * ((0.5 * 0.5) + (2 * 2)));

        // A prior of 0.5 and a reading of ±2 stops, so wide that Huber's function leaves it its weight.
        var fit = KitCalibration.Solve([new("meter", CalibrationReadingKind.FlashMeter, "beneath", 0, off * 0.9999, 2)], Prior).Value!.Fit;

        fit.ChiSquare.Should().BeApproximately(chiSquare, chiSquare * 0.01);
        fit.Probability.Should().BeApproximately(probability, probability * 0.03);
    }

    [Fact]
    public void Readings_that_contradict_each_other_change_nothing()
    {
        var readings = Enumerable.Range(0, 10).Select(i => new CalibrationReading($"{i}", CalibrationReadingKind.FlashMeter, "beneath", 0, 0.35 * (i % 2 == 0 ? 1 : -1), 0.12)).ToList();

        KitCalibration.Solve(readings, Prior).Diagnostics.Single().Code.Should().BeOneOf("FLD217", "FLD218");
    }

    /// <summary>Two meters that agree with each other, both 1.9 stops from the plan: what strains is the flash's own figure of ± 0.5, and the sheet is not meant.</summary>
    [Fact]
    public void Readings_that_strain_against_a_figure_of_the_kit_name_it()
    {
        var readings = new[] { "first", "second" }.Select(name => new CalibrationReading(name, CalibrationReadingKind.FlashMeter, "beneath", 0, 1.99, 0.12)).ToList();

        var fault = KitCalibration.Solve(readings, Prior).Diagnostics.Single();

        fault.Code.Should().Be("FLD218");
        fault.Hint.Should().Contain("the light of flash 'beneath' +1.9 (the kit's figure ± 0.5)").And.NotContain("transmittance");
    }

    [Theory]
    [InlineData(double.NaN, 0.1, "FLD202")]
    [InlineData(1, 0, "FLD203")]
    [InlineData(1, double.PositiveInfinity, "FLD203")]
    public void Readings_that_are_no_numbers_are_refused(double measured, double uncertainty, string code) =>
        KitCalibration.Solve([new("bad", CalibrationReadingKind.FlashMeter, "beneath", 1, measured, uncertainty)], Prior)
            .Diagnostics.Should().ContainSingle().Which.Code.Should().Be(code);

    private static CalibrationResult Solve(params CalibrationReading[] readings) => KitCalibration.Solve(readings, Prior).Value!;

    private static double Gaussian(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private sealed record Truth(double Beneath, double Above, double Panel, double Clip)
    {
        public double[] Values => [Beneath, Above, Panel, Clip];

        public List<CalibrationReading> Readings(double noise, Random random)
        {
            var readings = new List<CalibrationReading>();
            for (var i = 0; i < 3; i++)
            {
                Add("beneath", CalibrationReadingKind.FlashMeter, Beneath);
                Add("above", CalibrationReadingKind.FlashMeter, Above);
                Add("beneath", CalibrationReadingKind.PanelMeter, Beneath + Panel);
                Add("beneath", CalibrationReadingKind.WhiteMargin, Beneath + Panel - Clip);
                Add("above", CalibrationReadingKind.CardInFrame, Above - Clip);
            }

            return readings;

            void Add(string flash, CalibrationReadingKind kind, double off) =>
                readings.Add(new($"{kind} {readings.Count}", kind, flash, 0, off + (noise * Gaussian(random)), noise));
        }
    }
}
