namespace StudioKit.Wording;

/// <summary>The usual cautions where work can hurt someone or an animal; common practice, no source.</summary>
internal static class UsualCautions
{
    public const string LocalRules = "Local rules, permits and licensed practice come before anything on this sheet.";

    public const string SawingPipe =
        "Clamp the pipe, wear eye protection, deburr every end: a burr cuts hands and keeps the piece from seating. "
        + "Dust of plastic pipe and of aluminium does not belong in the lungs. " + LocalRules;

    public const string CuttingAcrylic =
        "Leave the film on. Score and snap over an edge or use a fine blade and slow feed; chips fly and edges are sharp: wear eye protection and gloves. "
        + "Acrylic burns and its hot fumes irritate: bend and saw with fresh air. Solvent cement is flammable and harmful to breathe. " + LocalRules;

    public const string Cells =
        "Carry spare lithium cells in hand luggage with their contacts covered, never crushed, wet or hot. Limits change: ask your carrier. " + LocalRules;

    public const string Flash =
        "Never open a flash: its capacitor holds a deadly charge for days. Do not fire close to the eyes of people or animals. " + LocalRules;

    public const string Animals =
        "Test on an object of the animal's size first. Hold no animal longer than you must, shade it, keep wet skins wet with clean hands, "
        + "do not handle venomous ones without training, and let it go where you found it. " + LocalRules;
}
