from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('waysaid_site', '0003_words'),
    ]

    operations = [
        migrations.AddField(
            model_name='schoolclass',
            name='rest',
            field=models.CharField(default='left-over', max_length=12),
        ),
    ]
