using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>Keys of the camera, its lenses and what goes between and before them.</summary>
internal static class CameraSections
{
    public static readonly Section<CameraSpec> Camera = new Section<CameraSpec>(
        "camera", "The camera body.", new() { Name = "", SensorWidth = Length.Zero, SensorHeight = Length.Zero }, partKind: "cameras")
        .Required("name", "Name on the sheets.").Name((camera, value) => camera with { Name = value })
        .Required("sensor", "Sensor, longer side first, e.g. '36 mm x 24 mm'.", "2 mm", "150 mm")
            .SensorSize((camera, value) => camera with { SensorWidth = value.First, SensorHeight = value.Second })
        .Optional("pixels", "Pixels along the longer and the shorter side.", "100", "100000")
            .Pixels((camera, value) => camera with { PixelsWide = value.Wide, PixelsHigh = value.High }, camera => new PixelCount(camera.PixelsWide, camera.PixelsHigh))
        .Optional("flash-sync", "Shortest shutter speed at which a flash lights the whole frame.", "1/8000 s", "1 s")
            .Shutter((camera, value) => camera with { FlashSync = value }, camera => camera.FlashSync)
        .Optional("iso", "Lowest ISO speed, and the highest that is still good enough.", "3", "10000000")
            .Isos((camera, value) => camera with { LowestIso = value.Lowest, HighestIso = value.Highest }, camera => new IsoRange(camera.LowestIso, camera.HighestIso))
        .Optional("reports-effective-f-number", "Whether the camera already shows the f-number that holds close up.")
            .YesNo((camera, value) => camera with { ReportsEffectiveFNumber = value }, camera => camera.ReportsEffectiveFNumber)
        .Optional("clip-point", "How far the camera's clipping lies above ISO 12232 saturation, 78/S; a test frame tells.", "-4", "4")
            .Stops((camera, value) => camera with { ClipPoint = value }, camera => camera.ClipPoint)
        .Optional("circle-of-confusion", "Greatest blur spot that passes for sharp on the sensor; else a 1500th of the diagonal.", "0.1 µm", "1 mm")
            .Length((camera, value) => camera with { CircleOfConfusion = value })
        .Optional("flange-distance", "Lens mount to sensor.", "1 mm", "150 mm")
            .Length((camera, value) => camera with { FlangeDistance = value }, camera => camera.FlangeDistance)
        .Optional("veiling-glare", "Glare inside camera and lens as a share of a uniform bright field.", "0", "1")
            .Ratio((camera, value) => camera with { VeilingGlare = value }, camera => camera.VeilingGlare)
        .Optional("mass", "Mass with its battery.", "1 g", "10 kg").Mass((camera, value) => camera with { Mass = value })
        .Check(camera => camera.SensorWidth >= camera.SensorHeight
            ? null
            : new Fault("sensor", "The sensor's shorter side stands first.", "Write the longer side first, for example '36 mm x 24 mm'."))
        .Check(camera => camera.PixelsWide >= camera.PixelsHigh
            ? null
            : new Fault("pixels", "The pixels of the shorter side stand first.", "Write the longer side first, for example '8192 x 5464'."));

    public static readonly Section<LensSpec> Lens = new Section<LensSpec>(
        "lens", "A lens and the magnifications it is used at.", new() { Name = "", FocalLength = Length.Zero }, partKind: "lenses", namedAmong: "lenses")
        .Required("name", "Name on the sheets; each lens has its own.").Name((lens, value) => lens with { Name = value })
        .Required("focal-length", "Focal length at infinity focus, e.g. '55 mm'.", "1 mm", "2 m")
            .Length((lens, value) => lens with { FocalLength = value })
        .Optional("focusing", "unit: the whole lens moves; internal: the focal length shortens close up.")
            .Choice<LensFocusing>("a way of focusing", (lens, value) => lens with { Focusing = value }, lens => lens.Focusing)
        .Optional("aperture", "Widest to smallest aperture, e.g. 'f/2.8 to f/32'.", "f/0.5", "f/256")
            .Apertures((lens, value) => lens with { WidestAperture = value.Widest, SmallestAperture = value.Smallest }, lens => new ApertureRange(lens.WidestAperture, lens.SmallestAperture))
        .Optional("largest-magnification", "Greatest magnification by its own focusing, without accessories.", "0.001", "20")
            .Magnification((lens, value) => lens with { LargestMagnification = value }, lens => lens.LargestMagnification)
        .Optional("closest-focus", "Subject to sensor at closest focus, taken as known to 1 %. With largest-magnification it tells where the principal planes of a unit-focusing lens lie and how far an internal-focusing one shortens; else the planes are assumed from focal length and length, give or take a quarter of the focal length.", "1 cm", "10 m")
            .Length((lens, value) => lens with { ClosestFocus = value })
        .Optional("pupil-ratio", "Exit over entrance pupil diameter (pupil magnification): width of the opening seen from behind over that seen from in front. Else 1, and more for a lens whose front glass stands farther than two focal lengths from the sensor, as a retrofocus lens's does; give or take a quarter of it.", "0.1", "10")
            .Factor((lens, value) => lens with { PupilRatio = value })
        .Optional("front-diameter", "Outside diameter of its front, hood and all, which may stand in a light's way.", "5 mm", "500 mm")
            .Length((lens, value) => lens with { FrontDiameter = value }, lens => lens.FrontDiameter)
        .Optional("hood", "How far a hood stands before the front glass.", "0 mm", "500 mm").Length((lens, value) => lens with { Hood = value }, lens => lens.Hood)
        .Optional("length", "Front glass to mount at infinity focus; else as long as its focal length, 50 mm at least, give or take a third.", "1 mm", "1 m").Length((lens, value) => lens with { Length = value })
        .Optional("reversed", "Whether it is mounted back to front by a reversing ring.")
            .YesNo((lens, value) => lens with { Reversed = value }, lens => lens.Reversed)
        .Optional("magnifications", "Magnifications wanted with it, e.g. '[1:2, 1:1]'; else its own largest.", "0.001", "20")
            .Magnifications((lens, value) => lens with { Magnifications = value })
        .Optional("mass", "Mass.", "1 g", "20 kg").Mass((lens, value) => lens with { Mass = value })
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
        .Required("name", "Name on the sheets.").Name((tube, value) => tube with { Name = value })
        .Required("length", "Extension it adds.", "0.5 mm", "500 mm").Length((tube, value) => tube with { Length = value })
        .Optional("mass", "Mass.", "1 g", "5 kg").Mass((tube, value) => tube with { Mass = value });

    public static readonly Section<CloseUpLensSpec> CloseUpLens = new Section<CloseUpLensSpec>(
        "close-up-lens", "A lens screwed on before the main lens.", new() { Name = "", Power = ReciprocalLength.Zero }, namedAmong: "close-up lenses")
        .Required("name", "Name on the sheets.").Name((lens, value) => lens with { Name = value })
        .Required("power", "Optical power, e.g. '+3 dpt'.", "0.1 dpt", "100 dpt").OpticalPower((lens, value) => lens with { Power = value })
        .Optional("mass", "Mass.", "1 g", "2 kg").Mass((lens, value) => lens with { Mass = value });

    public static readonly Section<TeleconverterSpec> Teleconverter = new Section<TeleconverterSpec>(
        "teleconverter", "A converter between camera and lens.", new() { Name = "", Factor = 1 }, namedAmong: "teleconverters")
        .Required("name", "Name on the sheets.").Name((converter, value) => converter with { Name = value })
        .Required("factor", "Factor by which it lengthens the focal length, e.g. '1.4x'.", "1.01", "4")
            .Factor((converter, value) => converter with { Factor = value })
        .Optional("length", "How much longer it makes the outfit.", "0 mm", "200 mm")
            .Length((converter, value) => converter with { Length = value }, converter => converter.Length)
        .Optional("mass", "Mass.", "1 g", "5 kg").Mass((converter, value) => converter with { Mass = value });

    public static readonly Section<FilterSpec> Filter = new Section<FilterSpec>(
        "filter", "A filter before the lens.", new() { Name = "", Kind = FilterKind.Polariser }, namedAmong: "filters")
        .Required("name", "Name on the sheets.").Name((filter, value) => filter with { Name = value })
        .Required("kind", "What it is for.").Choice<FilterKind>("a kind of filter", (filter, value) => filter with { Kind = value })
        .Optional("loss", "Light it takes, as a positive number of stops.", "0", "20")
            .Stops((filter, value) => filter with { Loss = value }, filter => filter.Loss)
        .Optional("mass", "Mass.", "1 g", "1 kg").Mass((filter, value) => filter with { Mass = value });

    public static readonly Section<AccessoriesSpec> Accessories = new Section<AccessoriesSpec>("accessories", "What goes between camera and lens, and before the lens.", new())
        .Many("extension-tubes", ExtensionTube, "Extension tubes, one entry a tube; they combine freely.", (all, value) => all with { ExtensionTubes = value })
        .Many("close-up-lenses", CloseUpLens, "Close-up lenses.", (all, value) => all with { CloseUpLenses = value })
        .Many("teleconverters", Teleconverter, "Teleconverters.", (all, value) => all with { Teleconverters = value })
        .Many("filters", Filter, "Polarising and neutral-density filters.", (all, value) => all with { Filters = value })
        .Optional("rail-pitch", "Travel of the focusing rail for one turn of its screw, e.g. '1.25 mm'.", "0.01 mm", "50 mm")
            .Length((all, value) => all with { RailPitch = value });
}
