using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using UnitsNet;

namespace StudioKit.Kits.Subjects;

/// <summary>Keys of the living things portrayed.</summary>
internal static class SubjectSections
{
    public static readonly Section<SubjectSpec> Subject = new Section<SubjectSpec>(
        "subject", "An animal or plant to be portrayed.", new() { Name = "", Group = SubjectGroup.FlyingInsects, Length = Length.Zero }, namedAmong: "subjects")
        .Required("name", Kinds.Name, "Name on cards and lists; each subject has its own.", (subject, value) => subject with { Name = (string)value! })
        .Required("group", Kinds.Choice(typeof(SubjectGroup), "a group of subjects"), "How it is handled.", (subject, value) => subject with { Group = (SubjectGroup)value! })
        .Required("length", Kinds.Length, "Longest dimension.", (subject, value) => subject with { Length = (Length)value! }, "0.1 mm", "3 m")
        .Free("height", Kinds.Length, "Height above the panel; else a third of the length.", (subject, value) => subject with { Height = (Length)value! }, "0.05 mm", "3 m")
        .Free("depth", Kinds.Length, "Depth that must be sharp, along the line of sight; else half its height.", (subject, value) => subject with { Depth = (Length)value! }, "0.01 mm", "3 m")
        .Optional("speed", Kinds.Speed, "How fast it moves on the panel.", (subject, value) => subject with { Speed = (Speed)value! }, subject => subject.Speed, "0 m/s", "20 m/s")
        .Optional("reflectance", Kinds.Ratio, "Mean reflectance, above 0 and at most 1.",
            (subject, value) => subject with { Reflectance = (double)value! }, subject => subject.Reflectance, "0.001", "1")
        .Optional("wet", Kinds.YesNo, "Whether its skin is wet and glares.", (subject, value) => subject with { Wet = (bool)value! }, subject => subject.Wet)
        .Free("hold-limit", Kinds.Duration, "Most time it is held; else the group's usual limit.", (subject, value) => subject with { HoldLimit = (Duration)value! }, "1 s", "1 h")
        .Free("frames", Kinds.Count, "Frames taken of it in each set-up; else the session's number.", (subject, value) => subject with { Frames = (int)value! }, "1", "1000")
        .Optional("stack", Kinds.YesNo, "Whether a focus stack is taken too, where one frame is not deep enough.", (subject, value) => subject with { Stack = (bool)value! }, subject => subject.Stack);
}
