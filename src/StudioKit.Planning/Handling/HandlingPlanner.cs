using StudioKit.Kits;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Sources;
using StudioKit.Planning.Covers;
using UnitsNet;

namespace StudioKit.Planning.Handling;

/// <summary>Handling guides and subjects of a kit → a card for each group.</summary>
internal static class HandlingPlanner
{
    // Advice on animals has no place on the card of what is not held.
    private static readonly HandlingTopic[] AnimalsOnly = [HandlingTopic.Never, HandlingTopic.Light, HandlingTopic.Release];

    /// <summary>One card for each group that a subject belongs to.</summary>
    public static IReadOnlyList<HandlingCard> Of(KitSpec kit)
    {
        var everyGroup = kit.Handling.Where(guide => guide.Group is null).SelectMany(guide => guide.Lines).ToList();
        return [.. kit.Handling.Where(guide => guide.Group is not null).Select(guide => Card(kit, guide, everyGroup))];
    }

    /// <summary>Most time that a subject is held: the kit's own limit, or its group's, or what a cover over it allows if that is shorter; none where it is not held.</summary>
    public static Duration? LimitOf(KitSpec kit, SubjectSpec subject) =>
        (subject.HoldLimit ?? kit.Handling.FirstOrDefault(guide => guide.Group == subject.Group)?.HoldLimit) is { } held
            ? CoverStays.Shortest(kit, subject) is { } stay && stay < held ? stay : held
            : null;

    private static HandlingCard Card(KitSpec kit, HandlingSpec guide, IReadOnlyList<HandlingLineSpec> everyGroup) => new()
    {
        Group = guide.Group!.Value,
        Name = guide.Name,
        Examples = guide.Examples,
        HoldLimit = guide.HoldLimit,
        Subjects = [.. kit.Subjects.Where(subject => subject.Group == guide.Group).Select(subject => new HeldSubject(subject.Name, LimitOf(kit, subject)))],
        Lines = [.. everyGroup.Where(line => guide.HoldLimit is not null || !AnimalsOnly.Contains(line.Topic))
            .Concat(guide.Lines).OrderBy(line => line.Topic).Select(line => Advice(line) with { Disinfectant = Disinfectant(line) })],
    };

    private static Disinfectant? Disinfectant(HandlingLineSpec line) =>
        line is { Agent: { } agent, Strength: { } strength, ContactTime: { } time } ? new Disinfectant(agent, strength, time) : null;

    private static HandlingAdvice Advice(HandlingLineSpec line)
    {
        if (!Bibliography.Entries.TryGetValue(line.Source, out var entry))
        {
            return new HandlingAdvice(line.Topic, line.Text, line.Source, Published: true);
        }

        var standing = entry.Standing is "from memory" ? ", from memory" : "";
        return entry.Standing == "practice"
            ? new HandlingAdvice(line.Topic, line.Text, "common practice, no published source", Published: false)
            : new HandlingAdvice(line.Topic, line.Text, entry.Citation + standing, Published: true);
    }
}
