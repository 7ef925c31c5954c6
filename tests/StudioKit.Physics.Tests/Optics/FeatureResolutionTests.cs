using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

public sealed class FeatureResolutionTests
{
    // So small that pixels take nothing.
    private static readonly FeatureCase Perfect = new()
    {
        Spacing = Length.FromMicrometers(10),
        Magnification = new Magnification(1),
        EffectiveFNumber = 8,
        PixelPitch = Length.FromNanometers(1),
    };

    /// <summary>Textbooks of optics give the contrast at Rayleigh's limit as about 9 % (from memory); the closed form at 1/1.22 of the cut-off is 0.0894.</summary>
    [Fact]
    public void Rayleighs_criterion_leaves_a_ninth_part_and_less_of_the_contrast() =>
        FeatureResolution.RayleighContrast.Should().BeApproximately(0.0894, 0.0002);

    /// <summary>Rayleigh: points part at 1.22·λ·N_e over the magnification, 1.22 × 0.55 µm × 22 / 0.5 = 29.52 µm.</summary>
    [Theory]
    [InlineData(29.6, true)]
    [InlineData(29.4, false)]
    public void With_nothing_but_diffraction_a_feature_is_resolved_from_rayleighs_separation_on(double spacing, bool resolved) =>
        FeatureResolution.Of(Perfect with { Spacing = Length.FromMicrometers(spacing), Magnification = new Magnification(0.5), EffectiveFNumber = 22 })
            .ResolvedInFocus.Should().Be(resolved);

    /// <summary>Shannon's theorem: two samples a period; pixels of 4 µm at 1:2 span 8 µm of the subject, so 16 µm are the least.</summary>
    [Theory]
    [InlineData(16.2, true)]
    [InlineData(15.8, false)]
    public void A_feature_of_less_than_two_pixels_is_not_resolved_however_sharp_the_lens(double spacing, bool resolved)
    {
        var result = FeatureResolution.Of(Perfect with
        {
            Spacing = Length.FromMicrometers(spacing),
            Magnification = new Magnification(0.5),
            EffectiveFNumber = 1.4,
            PixelPitch = Length.FromMicrometers(4),
        });

        result.ResolvedInFocus.Should().Be(resolved);
        result.InFocusLimit.Should().Be(FeatureLimit.Pixels);
    }

    /// <summary>Closed form: an even smear over x of a period keeps sin(πx)/(πx), half a period 2/π = 0.637; a whole period nothing.</summary>
    [Theory]
    [InlineData(5, 0.6366)]
    [InlineData(10, 0)]
    [InlineData(15, 0)]
    public void Smear_over_a_period_takes_all_of_a_feature(double smear, double kept)
    {
        var still = FeatureResolution.Of(Perfect with { EffectiveFNumber = 1 }).Contrast;
        var result = FeatureResolution.Of(Perfect with { EffectiveFNumber = 1, Smear = Length.FromMicrometers(smear) });

        (result.Contrast / still).Should().BeApproximately(kept, 1e-3);
        result.InFocusLimit.Should().Be(FeatureLimit.Smear);
        result.ResolvedInFocus.Should().Be(kept > 0.1);
    }

    [Fact]
    public void A_feature_fainter_than_the_criterion_is_never_resolved()
    {
        var result = FeatureResolution.Of(Perfect with { EffectiveFNumber = 1, Contrast = 0.08 });

        result.ResolvedInFocus.Should().BeFalse();
        result.InFocusLimit.Should().Be(FeatureLimit.Faintness);
    }

    /// <summary>
    /// Limit: a coarse grating at a wide aperture, where rays decide. 2·J₁(x)/x falls to 0.0894 at x = 3.459 (table of J₁: J₁(3.4) = 0.1792, 2·J₁/x = 0.1054; J₁(3.5) = 0.1374, 0.0785;
    /// straight between them), so the spot is x/(π·ν) = 1.101 periods of 1 mm, and the field 2·d·N/m² deep,
    /// the pupil far away; diffraction, 0.1 % of the cut-off, is worth 0.1 %.
    /// </summary>
    [Fact]
    public void A_coarse_feature_is_resolved_as_deep_as_rays_let_it()
    {
        var result = FeatureResolution.Of(Perfect with { Spacing = Length.FromMillimeters(1), EffectiveFNumber = 2 });

        result.Depth!.Value.Micrometers.Should().BeApproximately(2 * 1101 * 2, 10);
    }

    /// <summary>Law: whatever takes contrast away never makes a field deeper.</summary>
    [Fact]
    public void Fainter_smeared_or_coarser_sampled_is_never_resolved_deeper() =>
        Gen.Select(Gen.Double[5, 500], Gen.Double[0.1, 2], Gen.Double[2, 64], Gen.Double[0.1, 1], Gen.Double[0, 50], Gen.Double[0.5, 8]).Sample((spacing, m, fNumber, contrast, smear, pitch) =>
        {
            var given = Perfect with
            {
                Spacing = Length.FromMicrometers(spacing),
                Magnification = new Magnification(m),
                EffectiveFNumber = fNumber,
                Contrast = contrast,
                Smear = Length.FromMicrometers(smear),
                PixelPitch = Length.FromMicrometers(pitch),
                PupilVergence = 3,
            };
            var depth = FeatureResolution.Of(given).Depth?.Meters ?? 0;

            (FeatureResolution.Of(given with { Contrast = contrast * 0.9 }).Depth?.Meters ?? 0).Should().BeLessThanOrEqualTo(depth);
            (FeatureResolution.Of(given with { Smear = given.Smear * 1.1 }).Depth?.Meters ?? 0).Should().BeLessThanOrEqualTo(depth);
            (FeatureResolution.Of(given with { PixelPitch = given.PixelPitch * 1.1 }).Depth?.Meters ?? 0).Should().BeLessThanOrEqualTo(depth);
        }, iter: 100);

    /// <summary>Law: a depth is resolved just as far as the depth that is said to be.</summary>
    [Fact]
    public void A_feature_is_resolved_over_any_less_than_its_depth_and_over_no_more() =>
        Gen.Select(Gen.Double[5, 500], Gen.Double[0.1, 2], Gen.Double[2, 32], Gen.Double[0.2, 1], Gen.Double[0, 8]).Sample((spacing, m, fNumber, contrast, vergence) =>
        {
            var given = Perfect with
            {
                Spacing = Length.FromMicrometers(spacing),
                Magnification = new Magnification(m),
                EffectiveFNumber = fNumber,
                Contrast = contrast,
                PupilVergence = vergence,
            };
            var depth = FeatureResolution.Of(given).Depth;

            FeatureResolution.IsResolvedOver(given, Length.Zero).Should().Be(depth is not null);
            if (depth < Length.FromMeters(1))
            {
                FeatureResolution.IsResolvedOver(given, depth.Value * 0.999).Should().BeTrue();
                FeatureResolution.IsResolvedOver(given, depth.Value * 1.001).Should().BeFalse();
                FeatureResolution.IsResolvedOver(given, depth.Value * 4).Should().BeFalse("bright and dark changed about is not the feature");
            }
        }, iter: 100);

    [Fact]
    public void A_feature_without_spacing_or_contrast_is_refused()
    {
        var spacing = () => FeatureResolution.Of(Perfect with { Spacing = Length.Zero });
        var contrast = () => FeatureResolution.Of(Perfect with { Contrast = 0 });
        var more = () => FeatureResolution.Of(Perfect with { Contrast = 1.1 });

        spacing.Should().Throw<ArgumentOutOfRangeException>();
        contrast.Should().Throw<ArgumentOutOfRangeException>();
        more.Should().Throw<ArgumentOutOfRangeException>();
    }
}
