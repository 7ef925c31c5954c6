using StudioKit.Field.Log;
using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Cli.Records;

/// <summary>The fields of a subject as options.</summary>
internal static class SubjectFields
{
    public static RecordFields<FieldSubject> Create(CommandHost host) => new RecordFields<FieldSubject>(host)
        .Words("--name", "Scientific name, without doubt in it, e.g. Dolomedes.", (subject, value) => subject with { ScientificName = value })
        .Words("--qualifier", "Doubt about the name, e.g. \"cf. plantarius\".", (subject, value) => subject with { IdentificationQualifier = value })
        .Words("--vernacular", "Everyday name, e.g. \"raft spider\".", (subject, value) => subject with { VernacularName = value })
        .Words("--rank", "Rank that the name stands for, e.g. genus.", (subject, value) => subject with { TaxonRank = value })
        .Words("--sex", "Sex, e.g. female.", (subject, value) => subject with { Sex = value })
        .Words("--stage", "Life stage, e.g. adult.", (subject, value) => subject with { LifeStage = value })
        .Words("--behaviour", "What it did, e.g. \"sat on a leaf\".", (subject, value) => subject with { Behaviour = value })
        .Words("--remarks", "Anything else, e.g. \"left hind leg missing\".", (subject, value) => subject with { Remarks = value })
        .Names("--identified-by", "Who identified it, once for each, e.g. \"A. Sedge\".", (subject, value) => subject with { IdentifiedBy = value })
        .Count("--count", "How many were seen, e.g. 1.", (subject, value) => subject with { IndividualCount = value })
        .Choice<PlaceSensitivity>(
            "--sensitivity", "How far its place is made coarser on export: Open, Hundredth or Tenth of a degree, or Withheld, e.g. Tenth.",
            (subject, value) => subject with { Sensitivity = value })
        .Moment("--held-from", "When it was taken up, e.g. 2026-05-09T14:10; 'log hold' notes it as it happens.", (subject, value) => subject with { HoldStart = value }, subject => subject with { HoldStart = null, HoldEnd = null, HoldLimit = null, Released = null })
        .Moment("--held-until", "When it was let go, e.g. 2026-05-09T14:18.", (subject, value) => subject with { HoldEnd = value }, subject => subject with { HoldEnd = null, Released = null });

    /// <summary>With what 'log hold' notes when an animal is taken up and let go.</summary>
    public static RecordFields<FieldSubject> ForEdit(CommandHost host) => Create(host)
        .Quantity<Duration>(
            "--limit", "Most time it may be held, e.g. \"10 min\".", QuantityText.TryDuration,
            (subject, value) => subject with { HoldLimit = value is { } limit ? TimeSpan.FromSeconds(Math.Round(limit.Seconds)) : null })
        .Flag("--released", "Whether it was released where it was found, e.g. false.", (subject, value) => subject with { Released = value });
}
