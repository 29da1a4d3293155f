using System.Text;

namespace Fretloom.Pages.Scene;

/// <summary>How far each character carries the pen, in thousandths of the type size.</summary>
/// <remarks>
/// Read from the font files (<c>hmtx</c> of Source Sans 3 and Source Serif 4, ASCII 32 to 126), so that a layout needs
/// no font. Accidentals are those of the face drawn by this program, of its bold cut; all other characters are taken as 700.
/// </remarks>
internal static class Advances
{
    private const int Unknown = 700;

    // csharpier-ignore
    private static ReadOnlySpan<short> Sans =>
    [
        200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350, 497, 497, 497, 497, 497, 497, 497, 497,
        497, 497, 249, 249, 497, 497, 497, 425, 847, 543, 588, 571, 615, 527, 494, 617, 652, 263, 479, 579, 486, 727, 647, 664,
        566, 664, 569, 534, 536, 645, 515, 786, 513, 476, 539, 303, 350, 303, 497, 500, 542, 504, 553, 456, 555, 496, 292, 504,
        544, 246, 247, 495, 255, 829, 547, 542, 555, 555, 347, 419, 338, 544, 467, 719, 446, 467, 425, 303, 241, 303, 497,
    ];

    // csharpier-ignore
    private static ReadOnlySpan<short> SansBold =>
    [
        200, 340, 537, 528, 528, 857, 667, 300, 344, 344, 457, 528, 300, 332, 300, 339, 528, 528, 528, 528, 528, 528, 528, 528,
        528, 528, 300, 300, 528, 528, 528, 463, 902, 573, 605, 582, 635, 548, 524, 638, 674, 301, 509, 614, 518, 762, 665, 684,
        596, 684, 613, 556, 556, 665, 556, 813, 567, 525, 541, 344, 339, 344, 528, 500, 555, 527, 573, 468, 573, 518, 341, 534,
        571, 276, 278, 548, 286, 857, 572, 555, 573, 573, 398, 443, 383, 568, 523, 776, 514, 521, 460, 344, 268, 344, 528,
    ];

    // csharpier-ignore
    private static ReadOnlySpan<short> Serif =>
    [
        237, 289, 381, 525, 518, 932, 728, 182, 362, 362, 458, 534, 302, 320, 302, 341, 529, 529, 529, 529, 529, 529, 529, 529,
        529, 529, 302, 302, 534, 534, 534, 414, 834, 712, 653, 662, 739, 638, 612, 723, 814, 376, 381, 710, 618, 935, 768, 738,
        621, 738, 690, 544, 632, 758, 709, 1005, 672, 667, 586, 335, 341, 335, 534, 514, 400, 541, 619, 520, 614, 533, 369, 557,
        641, 329, 303, 594, 329, 955, 643, 579, 622, 601, 456, 465, 359, 628, 579, 836, 569, 586, 490, 359, 290, 359, 534,
    ];

    // csharpier-ignore
    private static ReadOnlySpan<short> SerifBold =>
    [
        228, 314, 423, 544, 538, 949, 739, 206, 384, 384, 458, 548, 307, 335, 307, 364, 547, 547, 547, 547, 547, 547, 547, 547,
        547, 547, 307, 307, 548, 548, 548, 430, 867, 712, 668, 663, 744, 634, 610, 725, 809, 387, 394, 726, 616, 930, 757, 742,
        637, 742, 707, 560, 650, 757, 706, 1020, 678, 667, 592, 356, 364, 356, 548, 528, 400, 554, 630, 527, 623, 540, 374, 573,
        650, 336, 313, 615, 337, 961, 652, 590, 632, 613, 475, 475, 368, 640, 581, 850, 585, 592, 497, 365, 301, 365, 548,
    ];

    public static int Of(Face face, Rune rune) =>
        rune.Value switch
        {
            >= 32 and <= 126 => Table(face)[rune.Value - 32],
            0x266D => 401, // flat
            0x266E => 324, // natural
            0x266F => 492, // sharp
            0x1D12A => 408, // double sharp
            0x1D12B => 712, // double flat
            0x2013 => 500, // en dash
            _ => Unknown,
        };

    private static ReadOnlySpan<short> Table(Face face) =>
        face switch
        {
            Face.Sans => Sans,
            Face.SansBold => SansBold,
            Face.Serif => Serif,
            _ => SerifBold,
        };
}
