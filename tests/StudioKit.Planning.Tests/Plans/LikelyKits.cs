using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Session;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using StudioKit.Kits.Supports;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Tests.Plans;

/// <summary>Kits as photographers own them, so that many of their set-ups work.</summary>
internal static class LikelyKits
{
    /// <summary>One lens, two flashes, one set-up.</summary>
    public static Gen<KitSpec> Any { get; } =
        from kind in Gen.Enum<SetUpKind>()
        from stands in Gen.Frequency((1, Gen.Const(true)), (2, Gen.Const(false)))
        let upright = stands && kind == SetUpKind.WhiteBackground
        from magnification in Gen.Double[0.1, 1.5]
        from guideNumber in Gen.Double[15, 60]
        from distance in Gen.Double[0.2, 0.6]
        from aperture in Gen.Double[5.6, 22]
        from iso in Gen.Double[100, 3200]
        from ambient in Gen.Double[4, 13]
        from fill in Gen.Double[-2, 0]
        from apart in Gen.OneOf(Gen.Const(0.0), Gen.Double[-4, 1])
        from reflecting in Gen.Frequency((1, Gen.Const(true)), (3, Gen.Const(false)))
        from bag in Gen.OneOf<ValueList<FilterSpec>>(Gen.Const<ValueList<FilterSpec>>([]), Gen.Const<ValueList<FilterSpec>>([Polariser]), Gen.Const<ValueList<FilterSpec>>([Polariser, Grey]))
        from wears in Gen.Bool
        from owned in Gen.OneOf<ValueList<SupportSpec>>(Gen.Const<ValueList<SupportSpec>>([]), Gen.Const<ValueList<SupportSpec>>([Bag]), Gen.Const<ValueList<SupportSpec>>([Bag, Tripod]))
        from rests in Gen.Bool
        from step in Gen.Enum<PowerStep>()
        from lowest in Gen.OneOf(Gen.Const(1.0 / 16), Gen.Const(1.0 / 128))
        from speed in Gen.OneOf(Gen.Const(0.0), Gen.Const(2.0), Gen.Const(15.0))
        from sync in Gen.OneOf(Gen.Const(1.0 / 160), Gen.Const(1.0 / 250))
        select new KitSpec
        {
            Name = "likely",
            Camera = new CameraSpec
            {
                Name = "body",
                SensorWidth = Length.FromMillimeters(36),
                SensorHeight = Length.FromMillimeters(24),
                FlashSync = new ShutterSpeed(sync),
                HighestIso = new IsoSpeed(6400),
            },
            Lenses = [new LensSpec { Name = "lens", FocalLength = Length.FromMillimeters(100), LargestMagnification = new Magnification(1.5), Magnifications = [new Magnification(magnification)] }],
            Accessories = new AccessoriesSpec { Filters = bag },
            Supports = owned,
            Flashes = [Flash("one", guideNumber, step, lowest), Flash("two", guideNumber, step, lowest)],
            // How often light goes to and fro under the sheet is nothing to the limits, and costs nearly all of the time: a few such kits will do.
            Panel = reflecting ? new PanelSpec() : new PanelSpec { UndersideReflectance = 0 },
            Site = reflecting ? new SiteSpec() : new SiteSpec { GroundReflectance = 0 },
            Subjects = [new SubjectSpec { Name = "moth", Group = SubjectGroup.FlyingInsects, Length = Length.FromMillimeters(20), Speed = Speed.FromMillimetersPerSecond(speed) }],
            Uprights = upright ? [new UprightSpec { Name = "screen", Sheet = reflecting ? new PanelSpec() : new PanelSpec { UndersideReflectance = 0 } }] : [],
            SetUps = [new SetUpSpec
            {
                Name = "set-up",
                Kind = kind,
                Aperture = new FNumber(aperture),
                Iso = new IsoSpeed(iso),
                Ambient = new ExposureValue(ambient),
                SubjectAmbient = kind != SetUpKind.WhiteBackground && apart != 0 ? new ExposureValue(ambient + apart) : null,
                FillLevel = apart < -2 ? null : new Stops(fill),
                BackgroundDistance = Length.FromMeters(upright ? 0.3 : 3),
                Upright = upright ? "screen" : null,
                CameraPitches = [Angle.FromDegrees(upright ? 0 : 60)],
                Lights = upright ? Behind(Length.FromMeters(distance)) : Lights(kind, Length.FromMeters(distance)),
                Filter = wears && bag.Count > 0 ? bag[0].Name : null,
                Support = rests && owned.Count > 0 ? owned[0].Name : null,
            }],
        };

    private static FilterSpec Polariser => new() { Name = "polariser", Kind = FilterKind.Polariser, Loss = new Stops(1.5) };

    private static SupportSpec Bag => new() { Name = "bean bag", Kind = SupportKind.BeanBag };

    private static SupportSpec Tripod => new() { Name = "tripod", Kind = SupportKind.Tripod };

    private static FilterSpec Grey => new() { Name = "grey", Kind = FilterKind.NeutralDensity, Loss = new Stops(3) };

    private static FlashSpec Flash(string name, double guideNumber, PowerStep step, double lowest) =>
        new() { Name = name, GuideNumber = new GuideNumber(Length.FromMeters(guideNumber)), PowerStep = step, LowestPower = new FlashPower(lowest) };

    private static ValueList<LightSpec> Lights(SetUpKind kind, Length distance) => kind switch
    {
        SetUpKind.WhiteBackground => [Light("one", LightRole.Below, Length.FromMillimeters(400)), Light("two", LightRole.Above, distance)],
        SetUpKind.DarkBackground => [Light("one", LightRole.Key, distance), Light("two", LightRole.Rim, distance)],
        _ => [Light("one", LightRole.Fill, distance)],
    };

    private static ValueList<LightSpec> Behind(Length distance) => [Light("one", LightRole.Behind, Length.FromMillimeters(400)), Light("two", LightRole.Key, distance)];

    private static LightSpec Light(string flash, LightRole role, Length distance) => new() { Flash = flash, Role = role, Distance = distance };
}
