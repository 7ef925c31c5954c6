using StudioKit.Kits.Description;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;
using StudioKit.Physics;

namespace StudioKit.Kits.Subjects;

/// <summary>Keys of the handling guides, which are parts of the library.</summary>
internal static class HandlingSections
{
    private const string Folder = "handling";
    private const string EveryGroup = "every-group";

    private static readonly Section<HandlingLineSpec> Line = new Section<HandlingLineSpec>(
        "line", "One piece of advice.", new() { Topic = HandlingTopic.Holding, Text = "" })
        .Required("topic", "What it is about.").Choice<HandlingTopic>("a topic of handling", (line, value) => line with { Topic = value })
        .Required("text", "The advice, a sentence.").Sentence((line, value) => line with { Text = value })
        .Optional("source", "Where it is published; else common practice.").Sentence((line, value) => line with { Source = value })
        .Optional("agent", "What it disinfects with; it then says strength and contact time too.")
            .Choice<DisinfectantAgent>("a disinfectant", (line, value) => line with { Agent = value })
        .Optional("strength", "How strong the agent is, a share of the whole.", "0.0001", "1").Ratio((line, value) => line with { Strength = value })
        .Optional("contact-time", "How long the agent must stay wet.", "1 s", "24 h").Duration((line, value) => line with { ContactTime = value })
        .Check(line => line.Agent is null == (line.Strength is null) && line.Agent is null == (line.ContactTime is null)
            ? null
            : new Fault("text", "A disinfectant needs all three: agent, strength and contact-time.", "Leave all three out where the authority of the place says what to use."));

    private static readonly Section<HandlingSpec> Guide = new Section<HandlingSpec>(
        "handling guide", "How living things of one group are handled.", new() { Name = "", Lines = [] }, partKind: Folder)
        .Required("name", "Name of the group on the card.").Name((guide, value) => guide with { Name = value })
        .Optional("examples", "What belongs to it.").Sentence((guide, value) => guide with { Examples = value })
        .Optional("hold-limit", "Most time that one is held.", "1 s", "4 h").Duration((guide, value) => guide with { HoldLimit = value })
        .Optional("kept-wet", "Whether it, and the sheet under it, is kept wet.").YesNo((guide, value) => guide with { KeptWet = value })
        .Many("lines", Line, "The advice, line by line.", (guide, value) => guide with { Lines = value }, isRequired: true);

    /// <summary>Reads what goes for every group and the guide of each group that a subject belongs to.</summary>
    public static ValueList<HandlingSpec> Read(IReadOnlyList<SubjectSpec> subjects, SourceText kit, ReadContext context)
    {
        if (subjects.Count == 0)
        {
            return [];
        }

        var groups = subjects.Select(subject => subject.Group).Distinct().Order();
        return [Read(null, EveryGroup, kit, context), .. groups.Select(group => Read(group, MemberText.Of(group), kit, context))];
    }

    private static HandlingSpec Read(SubjectGroup? group, string name, SourceText kit, ReadContext context) =>
        Guide.Read(new ScalarNode(kit, 1, 1, name, IsQuoted: false), Guide.Seed, isComplete: false, $"{Folder}.{name}", context) with { Group = group };
}
