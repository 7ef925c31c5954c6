using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.Covers;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Session;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Stock;
using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using StudioKit.Kits.Supports;
using StudioKit.Kits.Uprights;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Covers;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Tests.Plans;

/// <summary>Kits drawn from all that a kit file may hold, the ends of every range included: absurd, but readable.</summary>
internal static class RandomKits
{
    /// <summary>A kit with every section that light and optics look at.</summary>
    public static Gen<KitSpec> Any { get; } =
        from camera in Camera()
        from lenses in Lens().List[1, 2]
        from accessories in Accessories()
        from flashes in Flash().List[1, 3]
        from modifiers in Modifier().List[0, 2]
        from subjects in Subject().List[0, 2]
        from panel in Panel()
        from site in Site()
        from covers in Cover().List[0, 2]
        from holders in Holder().List[0, 2]
        from uprights in Upright().List[0, 2]
        from plain in SetUp((flashes.Count, modifiers.Count, holders.Count), covers.Count).List[1, 2]
        from behind in Behind(flashes.Count, modifiers.Count)
        from standing in Gen.Int[-2, uprights.Count - 1]
        let setUps = plain.Select(setUp => standing < 0 ? setUp : BeforeSheet(setUp, $"upright {standing}", uprights[standing].Carrier, behind)).ToList()
        from height in Log(0.01, 3)
        from rest in Gen.Enum<SupportKind>()
        from sway in Maybe(Flat(0, 1).Select(speed => Speed.FromMetersPerSecond(speed)))
        from frame in Gen.Enum<FrameKind>()
        select new KitSpec
        {
            Name = "random",
            Camera = camera,
            Lenses = [.. lenses.Select((lens, i) => lens with { Name = $"lens {i}" })],
            Accessories = accessories,
            Supports = [new SupportSpec { Name = "support", Kind = rest, MeasuredSway = sway }],
            Flashes = [.. flashes.Select((flash, i) => flash with { Name = $"flash {i}" })],
            Modifiers = [.. modifiers.Select((modifier, i) => modifier with { Name = $"modifier {i}" })],
            Covers = [.. covers.Select((cover, i) => cover with { Name = $"cover {i}" })],
            Uprights = [.. uprights.Select((upright, i) => upright with { Name = $"upright {i}" })],
            Holders = [.. holders.Select((holder, i) => holder with { Name = $"holder {i}" })],
            Subjects = [.. subjects.Select((subject, i) => subject with { Name = $"subject {i}" })],
            SetUps = [.. setUps.Select((setUp, i) => setUp with { Name = $"set-up {i}" })],
            Panel = panel,
            Site = site,

            // Only a table has a back rail that poles can be clipped to: a kit with another frame is not readable.
            Frame = new FrameSpec { Height = Length.FromMeters(height), Kind = uprights.Exists(upright => upright.Carrier == UprightCarrier.Frame) ? FrameKind.Table : frame },
            Stock = new StockSpec { Lengths = [new StockLengthSpec { Length = Length.FromMeters(6) }], Sheets = [new StockSheetSpec { Width = Length.FromMeters(3), Height = Length.FromMeters(3) }] },
        };

    // Evenly over the powers of ten, and often right on an end, where faults live.
    private static Gen<double> Log(double least, double most) => Gen.Frequency(
        (6, Gen.Double[Math.Log(least), Math.Log(most)].Select(Math.Exp)), (1, Gen.Const(least)), (1, Gen.Const(most)));

    private static Gen<double> Flat(double least, double most) => Gen.Frequency(
        (6, Gen.Double[least, most]), (1, Gen.Const(least)), (1, Gen.Const(most)));

    private static Gen<Length> Metres(double least, double most) => Log(least, most).Select(value => Length.FromMeters(value));

    private static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : struct => Gen.Bool.SelectMany(given => given ? gen.Select(value => (T?)value) : Gen.Const((T?)null));

    private static Gen<CameraSpec> Camera() =>
        from width in Log(0.002, 0.15)
        from share in Flat(0.3, 1)
        from pixels in Gen.Int[100, 100_000]
        from sync in Log(1.0 / 8000, 1)
        from lowest in Log(3, 10_000)
        from span in Log(1, 1000)
        from effective in Gen.Bool
        from clip in Flat(-4, 4)
        from circle in Maybe(Metres(1e-7, 1e-3))
        from flange in Log(0.001, 0.15)
        from glare in Flat(0, 1)
        select new CameraSpec
        {
            Name = "body",
            SensorWidth = Length.FromMeters(width),
            SensorHeight = Length.FromMeters(Math.Max(0.002, width * share)),
            PixelsWide = pixels,
            PixelsHigh = Math.Max(100, pixels / 2),
            FlashSync = new ShutterSpeed(sync),
            LowestIso = new IsoSpeed(lowest),
            HighestIso = new IsoSpeed(lowest * span),
            ReportsEffectiveFNumber = effective,
            ClipPoint = new Stops(clip),
            CircleOfConfusion = circle,
            FlangeDistance = Length.FromMeters(flange),
            VeilingGlare = glare,
        };

    private static Gen<LensSpec> Lens() =>
        from focal in Log(0.001, 2)
        from focusing in Gen.Enum<LensFocusing>()
        from widest in Log(0.5, 128)
        from range in Log(1, 200)
        from largest in Log(0.001, 20)
        from closest in Maybe(Metres(0.01, 10))
        from pupil in Log(0.1, 10)
        from length in Maybe(Metres(0.001, 1))
        from reversed in Gen.Bool
        from front in Metres(0.005, 0.5)
        from hood in Flat(0, 0.5)
        from wanted in Log(0.001, 20).List[0, 3]
        select new LensSpec
        {
            Name = "",
            FocalLength = Length.FromMeters(focal),
            Focusing = focusing,
            WidestAperture = new FNumber(widest),
            SmallestAperture = new FNumber(Math.Min(256, widest * range)),
            LargestMagnification = new Magnification(largest),
            ClosestFocus = focusing == LensFocusing.Internal || closest?.Meters >= 4 * focal ? closest : null,
            PupilRatio = pupil,
            Length = length,
            Reversed = reversed,
            FrontDiameter = front,
            Hood = Length.FromMeters(hood),
            Magnifications = [.. wanted.Select(m => new Magnification(m))],
        };

    private static Gen<AccessoriesSpec> Accessories() =>
        from tubes in Log(0.0005, 0.5).List[0, 3]
        from closeUps in Log(0.1, 100).List[0, 2]
        from converters in Gen.Select(Log(1.01, 4), Flat(0, 0.2)).List[0, 1]
        from loss in Flat(0, 20)
        from rail in Maybe(Metres(1e-5, 0.05))
        select new AccessoriesSpec
        {
            ExtensionTubes = [.. tubes.Select((tube, i) => new ExtensionTubeSpec { Name = $"tube {i}", Length = Length.FromMeters(tube) })],
            CloseUpLenses = [.. closeUps.Select((power, i) => new CloseUpLensSpec { Name = $"close-up {i}", Power = ReciprocalLength.FromInverseMeters(power) })],
            Teleconverters = [.. converters.Select((pair, i) => new TeleconverterSpec { Name = $"converter {i}", Factor = pair.Item1, Length = Length.FromMeters(pair.Item2) })],
            Filters = [new FilterSpec { Name = "filter", Kind = FilterKind.Polariser, Loss = new Stops(loss) }],
            RailPitch = rail,
        };

    private static Gen<FlashSpec> Flash() =>
        from guideNumber in GuideNumberOf()
        from zooms in GuideNumberOf().List[0, 2]
        from lowest in Log(1.0 / 4096, 1)
        from step in Gen.Enum<PowerStep>()
        from across in Maybe(Flat(1, 179).Select(degrees => Angle.FromDegrees(degrees)))
        from up in Maybe(Flat(1, 179).Select(degrees => Angle.FromDegrees(degrees)))
        from width in Metres(0.001, 1)
        from height in Metres(0.001, 1)
        from duration in Log(1e-6, 1)
        from recycle in Log(0.01, 60)
        select new FlashSpec
        {
            Name = "",
            GuideNumber = guideNumber,
            Zooms = [.. zooms],
            PowerStep = step,
            LowestPower = new FlashPower(lowest),
            BeamWidth = across,
            BeamHeight = up,
            HeadWidth = width,
            HeadHeight = height,
            FullPowerDuration = Duration.FromSeconds(duration),
            RecycleTime = Duration.FromSeconds(recycle),
        };

    private static Gen<GuideNumber> GuideNumberOf() =>
        from metres in Log(1, 300)
        from zoom in Maybe(Metres(0.005, 0.5))
        select zoom is { } at ? new GuideNumber(Length.FromMeters(metres), at) : new GuideNumber(Length.FromMeters(metres));

    private static Gen<ModifierSpec> Modifier() =>
        from kind in Gen.Enum<ModifierKind>()
        from width in Metres(0.005, 2)
        from height in Metres(0.005, 2)
        from transmittance in Log(0.001, 1)
        from lobe in Flat(0, 1000)
        from loss in Maybe(Flat(-3, 12).Select(stops => new Stops(stops)))
        from ball in Gen.Bool
        select new ModifierSpec
        {
            HalfBall = ball && kind == ModifierKind.Dome,
            Name = "",
            Kind = kind,
            Width = width,
            Height = height,
            Transmittance = transmittance,
            LobeExponent = lobe,
            Loss = loss,
        };

    private static Gen<HolderSpec> Holder() =>
        from kind in Gen.Enum<HolderKind>()
        from lowest in Maybe(Metres(0.01, 5))
        from span in Maybe(Metres(0.01, 1))
        from reach in Maybe(Metres(0.01, 5))
        from built in Gen.Bool
        from price in Gen.Int[0, 100]
        let stands = kind is HolderKind.Stand or HolderKind.Ground
        select new HolderSpec
        {
            Name = "",
            Kind = kind,
            Lowest = stands ? lowest : null,
            Highest = stands && span is { } more ? (lowest ?? Length.FromMeters(0.45)) + more : stands && lowest is { } least ? least + Length.FromMeters(2) : null,
            Reach = kind == HolderKind.Ground ? null : reach,
            Built = built && kind is not (HolderKind.Hand or HolderKind.Ground),
            Price = built || kind == HolderKind.Hand ? null : price,
        };

    private static Gen<SubjectSpec> Subject() =>
        from length in Metres(0.0001, 3)
        from height in Maybe(Metres(0.0001, 3))
        from depth in Maybe(Metres(0.00001, 3))
        from speed in Flat(0, 1)
        from kind in Gen.Enum<SubjectGroup>()
        from active in Active()
        select new SubjectSpec
        {
            Name = "",
            Group = kind,
            Active = active,
            Length = length,
            Height = height,
            Depth = depth,
            Speed = Speed.FromMetersPerSecond(speed),
        };

    private static Gen<ActiveTime?> Active() => Gen.OneOf(
        Gen.Const((ActiveTime?)null),
        Gen.Enum<DayPart>().Select(part => (ActiveTime?)new ActiveTime(null, part)),
        Gen.Select(Gen.Int[0, 1439], Gen.Int[0, 1439]).Where(hours => hours.Item1 != hours.Item2).Select(hours => (ActiveTime?)new ActiveTime(new ClockRange(hours.Item1, hours.Item2), null)));

    private static Gen<CoverSpec> Cover() =>
        from shape in Gen.Enum<CoverShape>()
        from width in Metres(0.005, 2)
        from depth in Metres(0.005, 2)
        from height in Metres(0.005, 2)
        from wall in Metres(0.0001, 0.03)
        from material in Gen.Enum<ClearMaterial>()
        from filled in Maybe(Flat(0, 1))
        from lifted in Gen.Bool
        from limit in Maybe(Log(1, 86_400).Select(seconds => Duration.FromSeconds(seconds)))
        select new CoverSpec
        {
            Name = "",
            Shape = shape,
            Width = width,
            Depth = shape is CoverShape.Dome or CoverShape.RoundTub ? width : depth,
            Height = shape == CoverShape.Dome ? UnitMath.Min(height, width / 2) : height,
            Wall = wall,
            Material = material,
            Water = shape == CoverShape.Tank && filled is { } share ? UnitMath.Max(Length.FromMillimeters(5), height * share) : null,
            Lifted = lifted && shape != CoverShape.Tank,
            TimeLimit = limit,
        };

    private static Gen<PanelSpec> Panel() =>
        from width in Maybe(Metres(0.05, 3))
        from depth in Maybe(Metres(0.05, 3))
        from thickness in Metres(0.0001, 0.03)
        from transmittance in Log(0.001, 1)
        from scatter in Flat(0, 1000)
        from reflectance in Flat(0, 1)
        from skirts in Gen.Bool
        from skirt in Flat(0, 1)
        from sweep in Maybe(Metres(0.01, 10))
        from finish in Gen.Enum<SheetFinish>()
        select new PanelSpec
        {
            Width = width,
            Depth = depth,
            Thickness = thickness,
            Transmittance = transmittance,
            ScatterExponent = scatter,
            UndersideReflectance = Math.Min(reflectance, 1 - transmittance),
            Skirts = skirts,
            SkirtReflectance = skirt,
            SweepRadius = sweep,
            Finish = finish,
        };

    private static Gen<SiteSpec> Site() =>
        from ambient in Flat(-6, 18)
        from wind in Flat(0, 40)
        from ground in Flat(0, 1)
        from hand in Flat(0, 1)
        from outdoors in Flat(-3, 1)
        from day in Maybe(Gen.Int[0, 73_048])
        from latitude in Flat(-90, 90)
        from longitude in Flat(-180, 180)
        from offset in Maybe(Flat(-12, 14).Select(hours => Duration.FromHours(hours)))
        from shade in Flat(0, 8)
        from downhill in Maybe(Flat(-180, 360).Select(degrees => Angle.FromDegrees(degrees)))
        select new SiteSpec
        {
            Date = day is { } days ? new DateOnly(1901, 1, 1).AddDays(days) : null,
            Latitude = Angle.FromDegrees(latitude),
            Longitude = Angle.FromDegrees(longitude),
            UtcOffset = offset,
            ShadeLoss = new Stops(shade),
            Downhill = downhill,
            Ambient = new ExposureValue(ambient),
            Wind = Speed.FromMetersPerSecond(wind),
            GroundReflectance = ground,
            HandSpeed = Speed.FromMetersPerSecond(hand),
            OutdoorCorrection = new Stops(outdoors),
        };

    private static Gen<SetUpSpec> SetUp((int Flashes, int Modifiers, int Holders) gear, int covers) =>
        from kind in Gen.Enum<SetUpKind>()
        from aperture in Maybe(Log(0.5, 256).Select(n => new FNumber(n)))
        from shutter in Maybe(Log(1.0 / 32_000, 60).Select(seconds => new ShutterSpeed(seconds)))
        from iso in Maybe(Log(3, 1e7).Select(speed => new IsoSpeed(speed)))
        from ambient in Maybe(Flat(-6, 18).Select(ev => new ExposureValue(ev)))
        from pitches in Flat(0, 90).List[1, 2]
        from first in Light(kind, gear, leading: true)
        from others in Light(kind, gear, leading: false).List[0, 2]
        from over in Metres(0.01, 5)
        from levels in Levels()
        from background in Metres(0.01, 1000)
        from subject in Maybe(Flat(-6, 18).Select(ev => new ExposureValue(ev)))
        from filtered in Gen.Bool
        from cover in Gen.Int[-1, covers - 1]
        from rests in Gen.Bool
        select levels with
        {
            Kind = kind,
            Aperture = aperture,
            Shutter = shutter,
            Iso = iso,
            Ambient = ambient,
            SubjectAmbient = kind == SetUpKind.WhiteBackground || ambient is null ? null : subject,
            CameraPitches = [.. pitches.Select(degrees => Angle.FromDegrees(degrees))],
            Lights = [first, .. others],
            BackgroundDistance = background,
            HeightOverGround = over,
            Filter = filtered ? "filter" : null,
            Cover = cover >= 0 && kind is (SetUpKind.WhiteBackground or SetUpKind.DarkBackground) ? $"cover {cover}" : null,
            Support = rests ? "support" : null,
        };

    private static Gen<UprightSpec> Upright() =>
        from carrier in Gen.Enum<UprightCarrier>()
        from width in Maybe(Metres(0.05, 3))
        from height in Maybe(Metres(0.05, 3))
        from margin in Flat(0, 1)
        from over in Flat(0, 2)
        from lean in Flat(0, 45)
        from transmittance in Log(0.001, 1)
        from scatter in Flat(0, 1000)
        from back in Flat(0, 1)
        from depth in Metres(0.05, 1)
        from foot in Metres(0.1, 2)
        from ballast in Flat(0, 50)
        from pegs in Gen.Int[0, 4]
        select new UprightSpec
        {
            Name = "",
            Carrier = carrier,
            Width = width,
            Height = height,
            Margin = Length.FromMeters(margin),
            OverGround = Length.FromMeters(over),
            Lean = Angle.FromDegrees(lean),
            Sheet = new PanelSpec { Transmittance = transmittance, ScatterExponent = scatter, UndersideReflectance = back },
            StakeDepth = depth,
            FootLength = foot,
            Ballast = Mass.FromKilograms(ballast),
            CordPegs = 2 * pegs,
        };

    private static Gen<LightSpec> Behind(int flashes, int modifiers) =>
        from flash in Gen.Int[0, flashes - 1]
        from modifier in Gen.Int[-1, modifiers - 1]
        from distance in Metres(0.01, 100)
        from right in Flat(-10, 10)
        from up in Flat(-3, 3)
        select new LightSpec
        {
            Flash = $"flash {flash}",
            Role = LightRole.Behind,
            Modifier = modifier < 0 ? null : $"modifier {modifier}",
            Distance = distance,
            OffsetRight = Length.FromMeters(right),
            OffsetUp = Length.FromMeters(up),
        };

    // On the frame it stands behind what is on the panel, elsewhere behind what grows there, with no flash below.
    private static SetUpSpec BeforeSheet(SetUpSpec setUp, string upright, UprightCarrier carrier, LightSpec behind) => setUp.Kind != SetUpKind.WhiteBackground
        ? setUp
        : carrier == UprightCarrier.Frame ? setUp with { Upright = upright, Lights = [.. setUp.Lights, behind] }
        : setUp with { Upright = upright, Cover = null, Lights = [behind, .. setUp.Lights.Where(light => light.Role != LightRole.Below)] };

    private static Gen<SetUpSpec> Levels() =>
        from target in Flat(-3, 4)
        from veil in Flat(0, 10)
        from below in Flat(0, 12)
        from fill in Flat(-8, 8)
        from under in Flat(0, 15)
        from rim in Flat(-8, 8)
        select new SetUpSpec
        {
            Name = "",
            Kind = SetUpKind.WhiteBackground,
            TargetWhiteMargin = new Stops(target),
            VeilLimit = new Stops(veil),
            AmbientBelowFlash = new Stops(below),
            FillLevel = new Stops(fill),
            AmbientUnder = new Stops(under),
            RimLevel = new Stops(rim),
        };

    // A light below has offsets, one about the subject a direction and what holds it.
    private static Gen<LightSpec> Light(SetUpKind kind, (int Flashes, int Modifiers, int Holders) kit, bool leading) =>
        from flash in Gen.Int[0, kit.Flashes - 1]
        from modifier in Gen.Int[-1, kit.Modifiers - 1]
        from role in Gen.Int[0, Roles(kind, leading).Length - 1].Select(i => Roles(kind, leading)[i])
        from distance in Metres(0.01, 100)
        from zoom in Maybe(Metres(0.005, 0.5))
        let light = new LightSpec { Flash = $"flash {flash}", Role = role, Modifier = modifier < 0 ? null : $"modifier {modifier}", Distance = distance, Zoom = zoom }
        from placed in role == LightRole.Below ? Below(light) : About(light, kind, kit.Holders)
        select placed;

    private static Gen<LightSpec> Below(LightSpec light) =>
        from right in Flat(-10, 10)
        from back in Flat(-10, 10)
        from tilt in Flat(-90, 90)
        select light with { OffsetRight = Length.FromMeters(right), OffsetBack = Length.FromMeters(back), Tilt = Angle.FromDegrees(tilt) };

    private static Gen<LightSpec> About(LightSpec light, SetUpKind kind, int holders) =>
        from azimuth in Maybe(Flat(-180, 180).Select(degrees => Angle.FromDegrees(degrees)))
        from elevation in Maybe(Flat(kind == SetUpKind.WhiteBackground ? 0 : -60, 90).Select(degrees => Angle.FromDegrees(degrees)))
        from holder in Gen.Int[-1, holders - 1]
        select light with { Azimuth = azimuth, Elevation = elevation, Holder = holder < 0 ? null : $"holder {holder}" };

    private static LightRole[] Roles(SetUpKind kind, bool leading) => (kind, leading) switch
    {
        (SetUpKind.WhiteBackground, true) => [LightRole.Below],
        (SetUpKind.WhiteBackground, false) => Enum.GetValues<LightRole>(),
        (SetUpKind.DarkBackground, true) => [LightRole.Key],
        (_, true) => [LightRole.Fill, LightRole.Key],
        _ => [LightRole.Fill, LightRole.Key, LightRole.Rim],
    };
}
