using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>Keys of the camera, its lenses and what goes between and before them.</summary>
internal static class CameraSections
{
    public static readonly Section<CameraSpec> Camera = new Section<CameraSpec>(
        "camera", "The camera body.", new() { Name = "", SensorWidth = Length.Zero, SensorHeight = Length.Zero }, partKind: "cameras")
        .Required("name", Kinds.Name, "Name on the sheets.", (camera, value) => camera with { Name = (string)value! })
        .Required("sensor", Kinds.SensorSize, "Sensor, longer side first, e.g. '36 mm x 24 mm'.",
            (camera, value) => camera with { SensorWidth = ((Size)value!).First, SensorHeight = ((Size)value!).Second }, "2 mm", "150 mm")
        .Optional("pixels", Kinds.Pixels, "Pixels along the longer and the shorter side.",
            (camera, value) => camera with { PixelsWide = ((PixelCount)value!).Wide, PixelsHigh = ((PixelCount)value!).High },
            camera => new PixelCount(camera.PixelsWide, camera.PixelsHigh), "100", "100000")
        .Optional("flash-sync", Kinds.Shutter, "Shortest shutter speed at which a flash lights the whole frame.",
            (camera, value) => camera with { FlashSync = (ShutterSpeed)value! }, camera => camera.FlashSync, "1/8000 s", "1 s")
        .Optional("iso", Kinds.Isos, "Lowest ISO speed, and the highest that is still good enough.",
            (camera, value) => camera with { LowestIso = ((IsoRange)value!).Lowest, HighestIso = ((IsoRange)value!).Highest },
            camera => new IsoRange(camera.LowestIso, camera.HighestIso), "3", "10000000")
        .Optional("reports-effective-f-number", Kinds.YesNo, "Whether the camera already shows the f-number that holds close up.",
            (camera, value) => camera with { ReportsEffectiveFNumber = (bool)value! }, camera => camera.ReportsEffectiveFNumber)
        .Optional("clip-point", Kinds.Stops, "How far the camera's clipping lies above ISO 12232 saturation, 78/S; a test frame tells.",
            (camera, value) => camera with { ClipPoint = (Stops)value! }, camera => camera.ClipPoint, "-4", "4")
        .Free("circle-of-confusion", Kinds.Length, "Greatest blur spot that passes for sharp on the sensor; else a 1500th of the diagonal.",
            (camera, value) => camera with { CircleOfConfusion = (Length)value! }, "0.1 µm", "1 mm")
        .Optional("flange-distance", Kinds.Length, "Lens mount to sensor.",
            (camera, value) => camera with { FlangeDistance = (Length)value! }, camera => camera.FlangeDistance, "1 mm", "150 mm")
        .Optional("veiling-glare", Kinds.Ratio, "Glare inside camera and lens as a share of a uniform bright field.",
            (camera, value) => camera with { VeilingGlare = (double)value! }, camera => camera.VeilingGlare, "0", "1")
        .Free("mass", Kinds.Mass, "Mass with its battery.", (camera, value) => camera with { Mass = (Mass)value! }, "1 g", "10 kg")
        .Check(camera => camera.SensorWidth >= camera.SensorHeight
            ? null
            : new Fault("sensor", "The sensor's shorter side stands first.", "Write the longer side first, for example '36 mm x 24 mm'."))
        .Check(camera => camera.PixelsWide >= camera.PixelsHigh
            ? null
            : new Fault("pixels", "The pixels of the shorter side stand first.", "Write the longer side first, for example '8192 x 5464'."));

    public static readonly Section<LensSpec> Lens = new Section<LensSpec>(
        "lens", "A lens and the magnifications it is used at.", new() { Name = "", FocalLength = Length.Zero }, partKind: "lenses", namedAmong: "lenses")
        .Required("name", Kinds.Name, "Name on the sheets; each lens has its own.", (lens, value) => lens with { Name = (string)value! })
        .Required("focal-length", Kinds.Length, "Focal length at infinity focus, e.g. '55 mm'.",
            (lens, value) => lens with { FocalLength = (Length)value! }, "1 mm", "2 m")
        .Optional("focusing", Kinds.Choice(typeof(LensFocusing), "a way of focusing"), "unit: the whole lens moves; internal: the focal length shortens close up.",
            (lens, value) => lens with { Focusing = (LensFocusing)value! }, lens => lens.Focusing)
        .Optional("aperture", Kinds.Apertures, "Widest to smallest aperture, e.g. 'f/2.8 to f/32'.",
            (lens, value) => lens with { WidestAperture = ((ApertureRange)value!).Widest, SmallestAperture = ((ApertureRange)value!).Smallest },
            lens => new ApertureRange(lens.WidestAperture, lens.SmallestAperture), "f/0.5", "f/256")
        .Optional("largest-magnification", Kinds.Magnification, "Greatest magnification by its own focusing, without accessories.",
            (lens, value) => lens with { LargestMagnification = (Magnification)value! }, lens => lens.LargestMagnification, "0.001", "20")
        .Free("closest-focus", Kinds.Length, "Subject to sensor at closest focus; tells an internal-focusing lens's focal length there.",
            (lens, value) => lens with { ClosestFocus = (Length)value! }, "1 cm", "10 m")
        .Optional("pupil-ratio", Kinds.Factor, "Exit over entrance pupil diameter (pupil magnification).",
            (lens, value) => lens with { PupilRatio = (double)value! }, lens => lens.PupilRatio, "0.1", "10")
        .Free("length", Kinds.Length, "Front glass to mount at infinity focus.", (lens, value) => lens with { Length = (Length)value! }, "1 mm", "1 m")
        .Optional("reversed", Kinds.YesNo, "Whether it is mounted back to front by a reversing ring.",
            (lens, value) => lens with { Reversed = (bool)value! }, lens => lens.Reversed)
        .Values("magnifications", Kinds.Magnification, "Magnifications wanted with it, e.g. '[1:2, 1:1]'; else its own largest.",
            (lens, value) => lens with { Magnifications = [.. value.Cast<Magnification>()] }, _ => [], "0.001", "20")
        .Free("mass", Kinds.Mass, "Mass.", (lens, value) => lens with { Mass = (Mass)value! }, "1 g", "20 kg")
        .Check(lens => lens.ClosestFocus is not { } closest || closest.Millimeters >= 4 * lens.FocalLength.Millimeters || lens.Focusing == LensFocusing.Internal
            ? null
            : new Fault("closest-focus", "A unit-focusing lens never focuses closer than four focal lengths from the sensor.",
                "Write 'focusing: internal', or measure from the sensor to the subject."))
        .Check(lens => lens.Focusing == LensFocusing.Internal && lens.ClosestFocus is null
            ? new Fault("focusing", $"'{lens.Name}' focuses internally, but its closest focus is not given.",
                "Add 'closest-focus', so that its focal length close up can be worked out.", IsWarning: true)
            : null);

    public static readonly Section<ExtensionTubeSpec> ExtensionTube = new Section<ExtensionTubeSpec>(
        "extension-tube", "A hollow tube between camera and lens.", new() { Name = "", Length = Length.Zero }, namedAmong: "extension tubes")
        .Required("name", Kinds.Name, "Name on the sheets.", (tube, value) => tube with { Name = (string)value! })
        .Required("length", Kinds.Length, "Extension it adds.", (tube, value) => tube with { Length = (Length)value! }, "0.5 mm", "500 mm")
        .Free("mass", Kinds.Mass, "Mass.", (tube, value) => tube with { Mass = (Mass)value! }, "1 g", "5 kg");

    public static readonly Section<CloseUpLensSpec> CloseUpLens = new Section<CloseUpLensSpec>(
        "close-up-lens", "A lens screwed on before the main lens.", new() { Name = "", Power = ReciprocalLength.Zero }, namedAmong: "close-up lenses")
        .Required("name", Kinds.Name, "Name on the sheets.", (lens, value) => lens with { Name = (string)value! })
        .Required("power", Kinds.OpticalPower, "Optical power, e.g. '+3 dpt'.", (lens, value) => lens with { Power = (ReciprocalLength)value! }, "0.1 dpt", "100 dpt")
        .Free("mass", Kinds.Mass, "Mass.", (lens, value) => lens with { Mass = (Mass)value! }, "1 g", "2 kg");

    public static readonly Section<TeleconverterSpec> Teleconverter = new Section<TeleconverterSpec>(
        "teleconverter", "A converter between camera and lens.", new() { Name = "", Factor = 1 }, namedAmong: "teleconverters")
        .Required("name", Kinds.Name, "Name on the sheets.", (converter, value) => converter with { Name = (string)value! })
        .Required("factor", Kinds.Factor, "Factor by which it lengthens the focal length, e.g. '1.4x'.",
            (converter, value) => converter with { Factor = (double)value! }, "1.01", "4")
        .Optional("length", Kinds.Length, "How much longer it makes the outfit.",
            (converter, value) => converter with { Length = (Length)value! }, converter => converter.Length, "0 mm", "200 mm")
        .Free("mass", Kinds.Mass, "Mass.", (converter, value) => converter with { Mass = (Mass)value! }, "1 g", "5 kg");

    public static readonly Section<FilterSpec> Filter = new Section<FilterSpec>(
        "filter", "A filter before the lens.", new() { Name = "", Kind = FilterKind.Polariser }, namedAmong: "filters")
        .Required("name", Kinds.Name, "Name on the sheets.", (filter, value) => filter with { Name = (string)value! })
        .Required("kind", Kinds.Choice(typeof(FilterKind), "a kind of filter"), "What it is for.", (filter, value) => filter with { Kind = (FilterKind)value! })
        .Optional("loss", Kinds.Stops, "Light it takes, as a positive number of stops.", (filter, value) => filter with { Loss = (Stops)value! }, filter => filter.Loss, "0", "20")
        .Free("mass", Kinds.Mass, "Mass.", (filter, value) => filter with { Mass = (Mass)value! }, "1 g", "1 kg");

    public static readonly Section<AccessoriesSpec> Accessories = new Section<AccessoriesSpec>("accessories", "What goes between camera and lens, and before the lens.", new())
        .Many("extension-tubes", ExtensionTube, "Extension tubes, one entry a tube; they combine freely.", (all, value) => all with { ExtensionTubes = value })
        .Many("close-up-lenses", CloseUpLens, "Close-up lenses.", (all, value) => all with { CloseUpLenses = value })
        .Many("teleconverters", Teleconverter, "Teleconverters.", (all, value) => all with { Teleconverters = value })
        .Many("filters", Filter, "Polarising and neutral-density filters.", (all, value) => all with { Filters = value })
        .Free("rail-pitch", Kinds.Length, "Travel of the focusing rail for one turn of its screw, e.g. '1.25 mm'.",
            (all, value) => all with { RailPitch = (Length)value! }, "0.01 mm", "50 mm");
}
