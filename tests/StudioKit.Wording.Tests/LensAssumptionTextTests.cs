using StudioKit.Physics.Optics;

namespace StudioKit.Wording.Tests;

public sealed class LensAssumptionTextTests
{
    [Theory]
    [InlineData(LensAssumptionKind.FrontGlassToMount, 0.05, 0.0167, "front glass to mount 50 mm ± 17 mm")]
    [InlineData(LensAssumptionKind.PrincipalPlanes, 0.036, 0.006, "principal planes 36 mm ± 6 mm apart")]
    [InlineData(LensAssumptionKind.PupilRatio, 2.28, 0.57, "pupil ratio 2.28 ± 0.57")]
    [InlineData(LensAssumptionKind.FocalLengthCloseUp, 0.12, 0.011, "focal length at closest focus 120 mm ± 11 mm")]
    [InlineData(LensAssumptionKind.PupilWhileFocusing, 0, 0.2, "width of the pupil while focusing ± 0.2 stops")]
    public void Every_assumption_is_told_with_its_uncertainty_and_unit(LensAssumptionKind kind, double value, double uncertainty, string words) =>
        LensAssumptionText.Of(new LensAssumption(kind, value, uncertainty)).Should().Be(words);

    [Fact]
    public void Every_kind_has_words_of_its_own() =>
        Enum.GetValues<LensAssumptionKind>().Select(kind => LensAssumptionText.Of(new LensAssumption(kind, 1, 1))).Should().OnlyHaveUniqueItems();

    [Fact]
    public void A_lens_that_is_given_in_full_has_no_sentence() => LensAssumptionText.Of("reed 55", []).Should().BeNull();

    /// <summary>A doubt without the measurement that would settle it helps nobody.</summary>
    [Fact]
    public void Every_assumption_names_what_to_measure()
    {
        var alone = Enum.GetValues<LensAssumptionKind>().Select(kind => LensAssumptionText.Of("reed 55", [new LensAssumption(kind, 0.1, 0.01)])!).ToList();

        alone.Should().OnlyContain(text => text.Contains("To be surer "));
        alone.Select(text => text[text.IndexOf("To be surer", StringComparison.Ordinal)..]).Distinct().Should().HaveCountGreaterThanOrEqualTo(4);
        alone.Should().Contain(text => text.Contains("'length'")).And.Contain(text => text.Contains("'pupil-ratio'")).And.Contain(text => text.Contains("'closest-focus'"));
    }
}
