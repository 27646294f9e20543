using System.Text;

namespace Lugwork.Reading;

/// <summary>Words of six languages that are near to a word of a bicycle and mean another thing: they are never taken for a slip of the pen.</summary>
/// <remarks>Found by going through published word lists for spelling; <c>SpellingTests</c> does it anew where they are installed.</remarks>
internal static partial class OtherWords
{
    /// <summary>Words of the trade, which lists for spelling do not have.</summary>
    private const string OfTheTrade = "boat boats luck presto schrade kloben krasje krasjes deukje deukjes plekje plekjes cambia cambian cambiano padre madre brosse brossee brosses brossees change changes changer changent charme charmes lekker lekkere cadeau cadeaux";

    /// <summary>Words that are another of seven or eight letters without its last.</summary>
    private const string WithoutEnd = "abziehe accept acciai actuate adapte alesat america amorti anklebe anlote anodise apertur approve aranazo assent attach aufnahm bandje barreno bastant bekabel blatte bleibe blokje bloque boutje bovenst bracke branch brasar brasat brauch breedst bullon cablat calida carboni carrie catalog centime centimo centra chicot circula clampe classic cleane cliquet cocotte collari collie combine command compri compute conditi conisch croche custodi dampfe deliver demand dentin depend descent diepst disparu distant distanz dollar doppel drille droppe ecarte elektr encoche enfonce entrar entrat erinner erlisch especia espeso expose extremo fabric flanke format france franke freigab garant geland gelast gemesse geplakt geruim glanzen gradin gramme gratuit groeve grootst halfte hendel herraje hochst holland horner impugn include inegale infanti ingaggi ingress insere inserta intacta intacto invalid italia italie kleinst klinge klinke knopje krasse kratze langst larget lasche latera legerin legger liegen liquid longes maande machine maggior maillo manilla marking materia memoir metter meulee minera minsten mistake modell moertje montag montat morbid mordaz mounte muesca neuere nomina onderst operate orecchi oreille orejeta origin origina ouvert overal pasado passen patine patter pendent pequen permit pesant picture pinche pivota plakke platea platin poigne polier portat potenz premie prepare pressat promise propri provide punter quadrat quelqu rabote rattle recesse recoup reduce reducto remove reparti reperce resten retenu retire return revers rischi risque rutsch saldar satinat sbagli schach schalte schatz schell schenke schiene schmal schotte schwere sectio separa slotte soldee spanne splitte staand stecke steppe sterre sticke strass string supplie tallon tampon taraud tasseau terrai tiefste tiraggi tirant toward traine trappe trimme tuberi umruste umwerfe unbolt vecchi verbote verdeel vereis verend verleg verloo vermut versat verteil vertel verval vervang verzahn volgen voorde voorst vroege wackel warrant waster wechsle wenige wiebel window wissen wobble wulste zapata zwitser";

    private static readonly Lazy<HashSet<string>> Words = new(() => new((Encoding.ASCII.GetString(All) + ' ' + OfTheTrade + ' ' + WithoutEnd).Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries), StringComparer.Ordinal));

    public static bool Has(string word) => Words.Value.Contains(word);
}
