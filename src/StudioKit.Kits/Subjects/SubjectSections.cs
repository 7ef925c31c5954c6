using StudioKit.Kits.Description;
using UnitsNet;

namespace StudioKit.Kits.Subjects;

/// <summary>Keys of the living things portrayed.</summary>
internal static class SubjectSections
{
    public static readonly Section<FeatureSpec> Feature = new Section<FeatureSpec>(
        "feature", "The feature by which a subject is told from its like: hairs, veins, facets, scale rows.", new() { Name = "" })
        .Required("name", "What it is.").Name((feature, value) => feature with { Name = value })
        .Optional("spacing", "Distance from one line of it to the next; this or its size.", "0.1 µm", "1 m").Length((feature, value) => feature with { Spacing = value })
        .Optional("size", "Width of a single one, a hair or a dot; this or its spacing.", "0.1 µm", "1 m").Length((feature, value) => feature with { Size = value })
        .Optional("relief", "How deep it lies along the line of sight; else flat.", "0 mm", "1 m")
            .Length((feature, value) => feature with { Relief = value }, feature => feature.Relief)
        .Optional("contrast", "Its contrast, from 0 for none to 1 for black on white.", "0.01", "1")
            .Ratio((feature, value) => feature with { Contrast = value }, feature => feature.Contrast)
        .Check(feature => (feature.Spacing, feature.Size) switch
        {
            (null, null) => new Fault("spacing", "The feature has neither spacing nor size.", "Give one of them, e.g. 'spacing: 60 µm'."),
            ({ }, { }) => new Fault("size", "The feature has both spacing and size.", "Keep the spacing where it repeats, the size of a single hair or dot otherwise."),
            _ => null,
        });

    public static readonly Section<SubjectSpec> Subject = new Section<SubjectSpec>(
        "subject", "An animal, a plant or a thing to be portrayed.", new() { Name = "", Group = SubjectGroup.FlyingInsects, Length = Length.Zero }, namedAmong: "subjects")
        .Required("name", "Name on cards and lists; each subject has its own.").Name((subject, value) => subject with { Name = value })
        .Required("group", "How it is handled.").Value(SubjectGroupText.Kind, (subject, place) => subject with { Group = (SubjectGroup)place }, null)
        .Required("length", "Longest dimension.", "0.1 mm", "3 m").Length((subject, value) => subject with { Length = value })
        .Optional("height", "Height above the panel; else a third of the length.", "0.05 mm", "3 m")
            .Length((subject, value) => subject with { Height = value })
        .Optional("depth", "Depth that must be sharp, along the line of sight; else half its height.", "0.01 mm", "3 m")
            .Length((subject, value) => subject with { Depth = value })
        .Optional("speed", "How fast it moves on the panel; else 5 mm/s, and not at all where it does not live.", "0 m/s", "20 m/s")
            .Speed((subject, value) => subject with { Speed = value }, subject => subject.Speed)
        .Optional("reflectance", "Mean reflectance, above 0 and at most 1.", "0.001", "1")
            .Ratio((subject, value) => subject with { Reflectance = value }, subject => subject.Reflectance)
        .Optional("wet", "Whether its skin is wet and glares.").YesNo((subject, value) => subject with { Wet = value }, subject => subject.Wet)
        .Optional("hold-limit", "Most time it is held; else the group's usual limit.", "1 s", "1 h")
            .Duration((subject, value) => subject with { HoldLimit = value })
        .Optional("active", "When it is about and can be photographed: hours, e.g. '21:30 to 02:00', or 'day', 'night', 'dawn' or 'dusk' by the sun; else at any time.")
            .Active((subject, value) => subject with { Active = value })
        .Optional("frames", "Frames taken of it in each set-up; else the session's number.", "1", "1000")
            .Count((subject, value) => subject with { Frames = value })
        .Optional("stack", "Whether a focus stack is taken too, where one frame is not deep enough.")
            .YesNo((subject, value) => subject with { Stack = value }, subject => subject.Stack)
        .Within("feature", Feature, "The feature that decides what it is.", (subject, value) => subject with { Feature = value });
}
