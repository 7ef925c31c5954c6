using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

public sealed class OpticalStackTests
{
    private static readonly Gen<OpticalStackCase> AnyUnitFocusingStack =
        Gen.Select(Gen.Double[20, 200], Gen.Double[0.2, 1.2], Gen.Double[0.4, 2.5], Gen.Double[0, 100], Gen.Double[1, 2], Gen.Double[2.8, 22])
            .Select((f, largest, p, tubes, factor, n) => Case(f) with
            {
                Lens = new LensOptics { FocalLength = Length.FromMillimeters(f), LargestMagnification = largest, PupilRatio = p, Hiatus = Length.Zero },
                Extension = Length.FromMillimeters(tubes),
                TeleconverterFactor = factor,
                Aperture = new FNumber(n),
            });

    /// <summary>Gaussian optics by hand: a thin 100 mm lens at life size, f/11.</summary>
    [Fact]
    public void A_100_mm_lens_at_life_size_stands_two_focal_lengths_from_everything()
    {
        var stack = OpticalStack.At(Case(100, 1) with { Aperture = new FNumber(11) }, 1);

        stack.Magnification.Value.Should().BeApproximately(1, 1e-12);
        stack.ObjectDistance.Millimeters.Should().BeApproximately(200, 1e-9);
        stack.SubjectToSensor.Millimeters.Should().BeApproximately(400, 1e-9);
        stack.Extension.Millimeters.Should().BeApproximately(100, 1e-9);
        stack.EffectiveFNumber.Value.Should().BeApproximately(22, 1e-9);
        stack.ExposureLossStops.Should().BeApproximately(2, 1e-9);
        stack.FieldWidth.Millimeters.Should().BeApproximately(36, 1e-9);
        stack.FieldHeight.Millimeters.Should().BeApproximately(24, 1e-9);
    }

    /// <summary>Common practice, no source: 27.5 mm of tube brings a unit-focusing 55 mm lens to 1:2, and its own half-life-size helicoid to 1:1.</summary>
    [Fact]
    public void A_55_mm_lens_gains_half_life_size_from_27_5_mm_of_tube()
    {
        var range = OpticalStack.Range(Case(55, 0.5) with { Extension = Length.FromMillimeters(27.5) });

        range.Smallest.Should().BeApproximately(0.5, 1e-12);
        range.Largest.Should().BeApproximately(1, 1e-12);
    }

    /// <summary>The 55 mm lens on 55 mm of extension at f/16, by the formulas that the other tests check: life size, f/32, 1.342 µm × 32.</summary>
    [Fact]
    public void A_question_asked_without_a_kit_gets_the_same_answer()
    {
        var stack = OpticalStack.FromExtension(
            Length.FromMillimeters(55), Length.FromMillimeters(55), new FNumber(16), Length.FromMillimeters(36), Length.FromMillimeters(24));
        var circle = CircleOfConfusion.FromDiagonal(36e-3, 24e-3);

        stack.Magnification.Value.Should().BeApproximately(1, 1e-12);
        stack.Extension.Millimeters.Should().BeApproximately(55, 1e-9);
        stack.ObjectDistance.Millimeters.Should().BeApproximately(110, 1e-9);
        stack.SubjectToSensor.Millimeters.Should().BeApproximately(220, 1e-9);
        stack.EffectiveFNumber.Value.Should().BeApproximately(32, 1e-9);
        DepthOfField.Of(stack, Length.FromMeters(circle)).Total!.Value.Millimeters.Should().BeApproximately(1.846, 0.001);
        (Diffraction.AiryDiscDiameter(stack.EffectiveFNumber.Value) * 1e6).Should().BeApproximately(42.94, 0.03);
    }

    /// <summary>photonstophotos.net: the 300 mm lens that is 242.9 mm long at 0.27 reaches 0.55 on 68 mm of tube, 1061 mm from the sensor; 0.2 %.</summary>
    [Fact]
    public void An_internal_focusing_lens_on_a_tube_agrees_with_the_published_example()
    {
        var bare = Case(300) with
        {
            Lens = new LensOptics
            {
                FocalLength = Length.FromMillimeters(300),
                LargestMagnification = 0.27,
                FocusesInternally = true,
                ClosestFocus = Length.FromMillimeters(242.9 * (2 + 0.27 + (1 / 0.27))),
            },
            Extension = Length.FromMillimeters(68),
        };

        var closest = OpticalStack.At(bare, 0.27);
        closest.FocalLength.Millimeters.Should().BeApproximately(242.9, 1e-9);
        closest.Magnification.Value.Should().BeApproximately(0.55, 0.005);
        closest.SubjectToSensor.Millimeters.Should().BeApproximately(1061, 0.002 * 1061);

        var infinity = OpticalStack.At(bare, 0);
        infinity.Magnification.Value.Should().BeApproximately(0.23, 0.005);
        infinity.FocalLength.Millimeters.Should().BeApproximately(300, 1e-9);
    }

    /// <summary>Article "Close-up lens": a 100 mm lens at infinity with +5 works at 200 mm, half life size, and loses no light.</summary>
    [Fact]
    public void A_close_up_lens_costs_no_light()
    {
        var stack = OpticalStack.At(
            Case(100) with { CloseUpPower = ReciprocalLength.FromInverseMeters(5), Aperture = new FNumber(8) }, 0);

        stack.Magnification.Value.Should().BeApproximately(0.5, 1e-12);
        stack.WorkingDistance.Millimeters.Should().BeApproximately(200, 1e-9);
        stack.EffectiveFNumber.Value.Should().BeApproximately(8, 1e-9);
        stack.ExposureLossStops.Should().BeApproximately(0, 1e-9);
    }

    /// <summary>alanwood.net: a half-life-size lens and a 2× converter make life size, two stops more than the lens alone loses.</summary>
    [Fact]
    public void A_doubling_converter_turns_half_life_size_into_life_size_for_two_stops()
    {
        var alone = OpticalStack.At(Case(100, 0.5), 0.5);
        var doubled = OpticalStack.At(Case(100, 0.5) with { TeleconverterFactor = 2 }, 0.5);

        doubled.Magnification.Value.Should().BeApproximately(1, 1e-12);
        (doubled.ExposureLossStops - alone.ExposureLossStops).Should().BeApproximately(2, 1e-9);
        doubled.WorkingDistance.Should().Be(alone.WorkingDistance);
    }

    /// <summary>ayton.id.au: 50 mm on 36 mm × 24 mm sees 39.6° × 27.0° at infinity; 0.1°. Here as the field of a subject 1 km away.</summary>
    [Fact]
    public void A_far_subject_fills_the_published_angle_of_view()
    {
        var stack = OpticalStack.At(Case(50, 0.1), 50e-6);

        Angle(stack.FieldWidth).Should().BeApproximately(39.6, 0.1);
        Angle(stack.FieldHeight).Should().BeApproximately(27.0, 0.1);

        double Angle(Length field) => 2 * Math.Atan(field / 2 / stack.ObjectDistance) * 180 / Math.PI;
    }

    /// <summary>Tubes add e/f to the magnification (photonstophotos.net); a converter multiplies magnification and f-number, 1.4× by one stop, 2× by two (alanwood.net).</summary>
    [Fact]
    public void The_matrices_agree_with_the_rules_for_tubes_and_converters() =>
        Gen.Select(AnyUnitFocusingStack, Gen.Double[0.05, 1]).Sample((stack, share) =>
        {
            var own = share * stack.Lens.LargestMagnification;
            var f = stack.Lens.FocalLength.Meters;
            var lensMagnification = own + (stack.Extension.Meters / f);
            var result = OpticalStack.At(stack, own);

            return Same(result.Magnification.Value, stack.TeleconverterFactor * lensMagnification)
                && Same(result.ObjectDistance.Meters, ThinLens.ObjectDistance(f, lensMagnification))
                && Same(result.SubjectToSensor.Meters, ThinLens.SubjectToSensor(f, lensMagnification))
                && Same(
                    result.EffectiveFNumber.Value,
                    stack.TeleconverterFactor * EffectiveAperture.EffectiveFNumber(stack.Aperture.Value, lensMagnification, stack.Lens.PupilRatio!.Value))
                && Same(
                    result.SubjectToEntrancePupil!.Value.Meters, f * ((1 / lensMagnification) + (1 / stack.Lens.PupilRatio!.Value)))
                && Same(result.StackFocalLength.Meters, f * stack.TeleconverterFactor);
        });

    /// <summary>Article "Close-up lens": a lens of power d on one focused at X focuses at X/(d·X + 1), and so enlarges d·X + 1 times.</summary>
    [Fact]
    public void The_matrices_agree_with_the_rules_for_close_up_lenses() =>
        Gen.Select(Gen.Double[20, 200], Gen.Double[0.5, 10], Gen.Double[0.02, 1]).Sample((f, power, own) =>
        {
            var result = OpticalStack.At(Case(f, 1) with { CloseUpPower = ReciprocalLength.FromInverseMeters(power) }, own);
            var distance = ThinLens.ObjectDistance(f / 1000, own);

            return Same(result.WorkingDistance.Meters, distance / ((power * distance) + 1))
                && Same(result.Magnification.Value, own * ((power * distance) + 1))
                && Same(result.EffectiveFNumber.Value, EffectiveAperture.EffectiveFNumber(16, own));
        });

    /// <summary>
    /// A lens read backwards is the same lens: its image-side cone at m is its object-side cone at 1/m the right way round, so
    /// N_e = N·(1 + 1/(m·p))·m = N·(m + 1/p), after Greivenkamp (2004) p. 29.
    /// </summary>
    [Fact]
    public void The_matrices_agree_with_the_rule_for_reversed_lenses() =>
        Gen.Select(Gen.Double[20, 60], Gen.Double[0.4, 2.5], Gen.Double[30, 100]).Sample((f, p, tubes) =>
        {
            var stack = Case(f) with
            {
                Lens = Reversed(f, 60) with { PupilRatio = p },
                Extension = Length.FromMillimeters(tubes),
                Aperture = new FNumber(8),
            };
            var result = OpticalStack.At(stack, 0);

            return Same(result.EffectiveFNumber.Value, 8 * (result.Magnification.Value + (1 / p)));
        });

    [Fact]
    public void A_close_up_lens_in_two_layers_equals_the_whole() =>
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[0.5, 5]).Sample((first, second) =>
        {
            var whole = OpticalStack.At(Case(80, 1) with { CloseUpPower = ReciprocalLength.FromInverseMeters(first + second) }, 0.5);
            var layers = Case(80, 1) with
            {
                CloseUpPower = ReciprocalLength.FromInverseMeters(first) + ReciprocalLength.FromInverseMeters(second),
            };
            return Same(OpticalStack.At(layers, 0.5).WorkingDistance.Meters, whole.WorkingDistance.Meters);
        });

    [Fact]
    public void The_effective_f_number_is_the_ray_cone_of_the_depth_of_field_of_any_stack() =>
        Gen.Select(AnyUnitFocusingStack, Gen.Double[0, 8]).Sample((stack, power) =>
        {
            var result = OpticalStack.At(
                stack with { CloseUpPower = ReciprocalLength.FromInverseMeters(power) }, stack.Lens.LargestMagnification);
            var zone = DepthOfField.Of(result, Length.FromMicrometers(0.01));
            var closeUp = DepthOfField.CloseUpTotal(result.Magnification.Value, result.EffectiveFNumber.Value, 1e-8);

            return Math.Abs((zone.Total!.Value.Meters / closeUp) - 1) < 1e-4;
        });

    [Fact]
    public void A_magnification_asked_for_is_the_magnification_found() =>
        Gen.Select(Gen.Double[30, 200], Gen.Double[0.01, 1], Gen.Double[0, 60], Gen.Double[0, 5], Gen.Bool).Sample((f, own, tubes, power, inside) =>
        {
            var stack = Case(f, 1) with
            {
                Lens = new LensOptics
                {
                    FocalLength = Length.FromMillimeters(f),
                    LargestMagnification = 1,
                    FocusesInternally = inside,
                    ClosestFocus = Length.FromMillimeters(3 * f),
                },
                Extension = Length.FromMillimeters(tubes),
                CloseUpPower = ReciprocalLength.FromInverseMeters(power),
            };
            var wanted = OpticalStack.At(stack, own).Magnification;
            var found = OpticalStack.AtMagnification(stack, wanted);

            return found.Stack is { } focused && Math.Abs((focused.Magnification.Value / wanted.Value) - 1) < 1e-9;
        });

    [Theory]
    [InlineData(0.3)]
    [InlineData(1.2)]
    public void A_magnification_out_of_reach_comes_with_the_reach(double wanted)
    {
        var found = OpticalStack.AtMagnification(
            Case(55, 0.5) with { Extension = Length.FromMillimeters(27.5) }, new Magnification(wanted));

        found.Stack.Should().BeNull();
        found.Range.Smallest.Should().BeApproximately(0.5, 1e-9);
        found.Range.Largest.Should().BeApproximately(1, 1e-9);
    }

    [Fact]
    public void Working_distance_is_measured_from_the_front_glass()
    {
        // By hand: at life size a 100 mm lens has 400 mm between subject and sensor, of which 44 mm are camera, 110 mm lens and 100 mm travel.
        var stack = OpticalStack.At(
            Case(100, 1) with { Lens = Case(100, 1).Lens with { BarrelLength = Length.FromMillimeters(110) } }, 1);

        stack.WorkingDistance.Millimeters.Should().BeApproximately(146, 1e-9);
        stack.WorkingDistanceIsEstimated.Should().BeFalse();
        stack.Caveats.Should().BeEmpty();
    }

    [Fact]
    public void A_guessed_length_of_the_lens_is_said_to_be_a_guess()
    {
        var stack = OpticalStack.At(Case(100, 1), 1);

        stack.WorkingDistanceIsEstimated.Should().BeTrue();
        stack.Caveats.Should().ContainSingle().Which.Should().Contain("guessed length");
    }

    [Fact]
    public void A_wide_angle_lens_on_a_tube_touches_its_subject()
    {
        var stack = OpticalStack.At(
            Case(24) with
            {
                Lens = new LensOptics { FocalLength = Length.FromMillimeters(24), BarrelLength = Length.FromMillimeters(70), PupilRatio = 2, Hiatus = Length.Zero },
                Extension = Length.FromMillimeters(12),
            },
            0);

        stack.Magnification.Value.Should().BeApproximately(0.5, 1e-12);
        stack.TouchesSubject.Should().BeTrue();
        stack.Caveats.Should().Contain(caveat => caveat.Contains("touch"));
    }

    /// <summary>Common practice, no source: a reversed lens never works nearer than about its own flange distance.</summary>
    [Fact]
    public void A_reversed_lens_keeps_at_least_its_flange_distance() =>
        Gen.Select(Gen.Double[20, 60], Gen.Double[20, 200]).Sample((f, tubes) =>
            OpticalStack.At(Case(f) with { Lens = Reversed(f, 60), Extension = Length.FromMillimeters(tubes) }, 0)
                .WorkingDistance.Millimeters >= 44 - 1e-9);

    [Fact]
    public void A_reversed_lens_too_near_the_sensor_comes_to_no_focus_without_extension()
    {
        var found = OpticalStack.AtMagnification(Case(135) with { Lens = Reversed(135, 50) }, new Magnification(1));

        found.Stack.Should().BeNull();
        found.Range.Largest.Should().BeLessThanOrEqualTo(0);
        OpticalStack.Range(Case(135) with { Lens = Reversed(135, 50), Extension = Length.FromMillimeters(150) }).Largest.Should().BePositive();
    }

    [Fact]
    public void A_camera_that_reports_the_effective_f_number_is_not_corrected_twice()
    {
        var stack = Case(100, 1) with { ApertureIsEffective = true, Aperture = new FNumber(16), TeleconverterFactor = 1.4 };

        OpticalStack.At(stack, 1).EffectiveFNumber.Value.Should().BeApproximately(16, 1e-9);
        OpticalStack.At(stack, 1).ExposureLossStops.Should().BeApproximately(0, 1e-9);

        // By hand: the camera knows of 1:1 but not of the tube that makes it 2:1, so (1 + 2)/(1 + 1) remains to be added.
        OpticalStack.At(stack with { Extension = Length.FromMillimeters(100) }, 1).EffectiveFNumber.Value.Should().BeApproximately(24, 1e-9);
    }

    /// <summary>Greivenkamp (2004): N·(1 + m/p); the camera reports just that for its own lens, so nothing is left to correct.</summary>
    [Theory]
    [InlineData(0.6)]
    [InlineData(1.4)]
    public void A_reported_effective_f_number_counts_the_lenss_own_pupils(double pupilRatio)
    {
        var plain = Case(100, 1) with { Aperture = new FNumber(16), Lens = Case(100, 1).Lens with { PupilRatio = pupilRatio } };

        OpticalStack.At(plain, 1).EffectiveFNumber.Value.Should().BeApproximately(16 * (1 + (1 / pupilRatio)), 1e-9);
        OpticalStack.At(plain with { ApertureIsEffective = true }, 1).EffectiveFNumber.Value
            .Should().BeApproximately(16, 1e-9, "the camera has allowed for its lens's pupil ratio already");
    }

    [Fact]
    public void Far_away_the_stack_is_a_lens_at_infinity()
    {
        var stack = OpticalStack.At(Case(60, 1), 1e-7);

        stack.EffectiveFNumber.Value.Should().BeApproximately(16, 1e-4);
        stack.Extension.Millimeters.Should().BeApproximately(0, 1e-4);
        stack.ExitPupilToSensor.Millimeters.Should().BeApproximately(60, 1e-4);
        (stack.ObjectDistance.Meters * stack.Magnification.Value).Should().BeApproximately(0.06, 1e-6);
    }

    [Fact]
    public void A_pupil_in_the_focus_of_the_close_up_lens_makes_a_picture_without_perspective()
    {
        // f·(1/p − 1) = 100 mm behind the principal plane, and +10 has its focus there.
        var stack = OpticalStack.At(
            Case(100) with
            {
                Lens = new LensOptics { FocalLength = Length.FromMillimeters(100), PupilRatio = 0.5 },
                CloseUpPower = ReciprocalLength.FromInverseMeters(10),
            },
            0);
        var zone = DepthOfField.Of(stack, Length.FromMicrometers(30));

        stack.SubjectToEntrancePupil.Should().BeNull();
        zone.Near.Millimeters.Should().BeApproximately(zone.Far!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void A_pupil_beyond_the_subject_deepens_the_near_side()
    {
        // With +12 the same pupil is imaged behind the subject: cones narrow towards the camera, so more is sharp before than behind.
        var stack = OpticalStack.At(
            Case(100) with
            {
                Lens = new LensOptics { FocalLength = Length.FromMillimeters(100), PupilRatio = 0.5 },
                CloseUpPower = ReciprocalLength.FromInverseMeters(12),
            },
            0);
        var zone = DepthOfField.Of(stack, Length.FromMicrometers(30));

        stack.SubjectToEntrancePupil!.Value.Should().BeLessThan(Length.Zero);
        zone.Near.Should().BeGreaterThan(zone.Far!.Value);
    }

    [Fact]
    public void Focus_at_infinity_has_no_field_and_is_refused() =>
        FluentActions.Invoking(() => OpticalStack.At(Case(100, 1), 0)).Should().Throw<ArgumentOutOfRangeException>();

    [Theory]
    [InlineData(0, 50)]
    [InlineData(-50, 50)]
    [InlineData(55, 0)]
    [InlineData(55, -1)]
    public void A_lens_or_extension_that_is_none_is_refused(double focalLength, double extension) =>
        FluentActions.Invoking(() => OpticalStack.FromExtension(
                Length.FromMillimeters(focalLength),
                Length.FromMillimeters(extension),
                new FNumber(16),
                Length.FromMillimeters(36),
                Length.FromMillimeters(24)))
            .Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void Accessories_that_are_none_are_refused()
    {
        Refused(Case(100) with { Extension = Length.FromMillimeters(-1) });
        Refused(Case(100) with { CloseUpPower = ReciprocalLength.FromInverseMeters(-3) });
        Refused(Case(100) with { TeleconverterFactor = 0.7 });
        Refused(Case(100) with { TeleconverterFactor = double.NaN });
        Refused(Case(100) with { FlangeDistance = Length.FromMillimeters(-1) });
        Refused(Case(100) with { Lens = Case(100).Lens with { PupilRatio = 0 } });
        Refused(Case(100) with { Lens = Case(100).Lens with { LargestMagnification = double.NaN } });
        Refused(Case(100) with { Lens = Case(100).Lens with { BarrelLength = Length.Zero } });

        static void Refused(OpticalStackCase stack) =>
            FluentActions.Invoking(() => OpticalStack.Range(stack)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static LensOptics Reversed(double focalLength, double barrel) => new()
    {
        FocalLength = Length.FromMillimeters(focalLength),
        BarrelLength = Length.FromMillimeters(barrel),
        Reversed = true,
    };

    private static OpticalStackCase Case(double focalLength, double largestMagnification = 0) => new()
    {
        // A thin lens, as the rules worked by hand have it: principal planes together, pupils alike.
        Lens = new LensOptics
        {
            FocalLength = Length.FromMillimeters(focalLength),
            LargestMagnification = largestMagnification,
            Hiatus = Length.Zero,
            PupilRatio = 1,
        },
        SensorWidth = Length.FromMillimeters(36),
        SensorHeight = Length.FromMillimeters(24),
    };

    private static bool Same(double left, double right) => Math.Abs(left - right) <= 1e-9 * Math.Abs(right);
}
