using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Subjects;

/// <summary>Groups of subjects as kit files spell them; what people call their animals is answered with its group.</summary>
internal static class SubjectGroupText
{
    private static readonly ValueKind<int> Choice = Kinds.Choice(typeof(SubjectGroup), "a group of subjects");

    // Everyday words in the singular, and plurals that no ending makes.
    private static readonly (SubjectGroup Group, string Words)[] Everyday =
    [
        (SubjectGroup.FlyingInsects, "moth butterfly fly dragonfly damselfly hoverfly mayfly caddisfly lacewing bee bumblebee wasp hornet mosquito midge gnat cicada"),
        (SubjectGroup.CrawlingInsectsAndSpiders, "caterpillar beetle bug spider ant larva larvae pupa pupae grub grasshopper cricket earwig woodlouse woodlice aphid mite tick harvestman harvestmen "
            + "cockroach mantis mantises termite weevil ladybird ladybug tarantula pseudoscorpion arachnid"),
        (SubjectGroup.Snails, "snail slug mollusc mollusk"),
        (SubjectGroup.Amphibians, "frog toad newt salamander froglet amphibian"),
        (SubjectGroup.WaterAnimals, "water pond aquatic fish fishes minnow stickleback tadpole backswimmer leech shrimp crayfish nymph"),
        (SubjectGroup.Reptiles, "lizard snake gecko skink chameleon tortoise turtle viper adder reptile"),
        (SubjectGroup.PlantsAndFungi, "plant flower orchid sundew fern moss mosses lichen mushroom toadstool fungus fungi leaf leaves grass seed fruit"),
        (SubjectGroup.Scorpions, "scorpion"),
        (SubjectGroup.CentipedesAndMillipedes, "centipede millipede myriapod"),
        (SubjectGroup.SmallMammals, "mammal mouse mice vole shrew bat mole hedgehog rat dormouse dormice squirrel rodent lemming"),
        (SubjectGroup.LifelessThings, "shell seashell feather fossil mineral stone rock crystal bone skull egg eggshell nest antler gall amber pebble skin exuvia exuviae thing"),
    ];

    /// <summary>A group as the place of its member.</summary>
    public static readonly ValueKind<int> Kind = Choice with { Read = Read };

    private static Reading<int> Read(string text)
    {
        var reading = Choice.Read(text);
        if (reading.IsGood)
        {
            return reading;
        }

        var words = text.ToLowerInvariant().Split([' ', '-', ',', '_'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Any(word => word is "insect" or "insects"))
        {
            return Reading<int>.Bad(reading.Problem!, $"Write '{Name(SubjectGroup.FlyingInsects)}' for those that fly, '{Name(SubjectGroup.CrawlingInsectsAndSpiders)}' for those that crawl.");
        }

        var found = Everyday.Where(group => words.Any(word => Names(group.Words, word))).ToList();

        // A water beetle is held as what lives in water, not as what crawls.
        if (found.Count > 1)
        {
            found.RemoveAll(group => group.Group != SubjectGroup.WaterAnimals);
        }

        // A slip in a group's own name is told as that.
        return found.Count == 1 && reading.Hint?.Contains($"'{Name(found[0].Group)}'", StringComparison.Ordinal) != true
            ? Reading<int>.Bad(reading.Problem!, $"Its group is '{Name(found[0].Group)}'. Known: {string.Join(", ", Choice.Words)}.")
            : reading;
    }

    private static bool Names(string all, string word)
    {
        var known = all.Split(' ');
        return Singulars(word).Any(singular => Array.IndexOf(known, singular) >= 0);
    }

    private static IEnumerable<string> Singulars(string word)
    {
        yield return word;
        if (word.EndsWith("ies", StringComparison.Ordinal))
        {
            yield return word[..^3] + "y";
        }

        if (word.EndsWith("es", StringComparison.Ordinal))
        {
            yield return word[..^2];
        }

        if (word.EndsWith('s'))
        {
            yield return word[..^1];
        }
    }

    private static string Name(SubjectGroup group) => Choice.Words[(int)group];
}
